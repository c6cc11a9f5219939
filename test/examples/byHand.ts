/**
 * Counts of the example patterns, worked out with pencil and paper for the size of the sample. For each row
 * block that makes rows: the number of its last row, stitches, chain-spaces. A foundation has no number: 0.
 */

type Counted = readonly [last: number, stitches: number, spaces: number];
type ByHand = readonly (readonly [piece: string, rows: readonly Counted[]])[];

/**
 * Vest, size M. 16 sts and 16 rows are 4 in, so 4 of each are 1 in.
 * Chest 38 + 5 = 43 in, a panel 21½ in = 86 sts = 6 × 14 + 2, which is 28 Vs and 2 edge sts; a row of Vs has
 * 28 × 2 + 2 = 58 hdc and 28 spaces. 12¾ in are 51 rows.
 * Yoke: 16½ + (21½ − 16½) × 0.35 = 18¼ in, so (21½ − 18¼) ÷ 2 = 1⅝ in = 6½ sts at each underarm: 6. 86 − 12 = 74
 * = 24 × 3 + 2: 24 Vs, 50 hdc. Armhole 7½ + 1½ = 9 in = 36 rows.
 * Shoulder: (18½ − 8½) ÷ 2 = 5 in = 20 sts = 6 × 3 + 2: 6 Vs, 14 hdc. Neck 74 − 40 = 34 sts; drop 4 in = 16 rows,
 * so the front divides after 36 − 16 = 20.
 * Neckband 34 + 34 + 16 + 16 + 2 seams = 102, less 2 × 2 = 98. Armband 6 + 6 + 36 + 36 + 2 seams = 86, less 4 = 82.
 */
const vest: ByHand = [
  [
    'Panels',
    [
      [0, 87, 0],
      [1, 86, 0],
      [2, 58, 28],
      [3, 86, 0],
      [51, 86, 0],
    ],
  ],
  [
    'Back',
    [
      [1, 50, 24],
      [2, 74, 0],
      [3, 50, 24],
      [4, 74, 0],
      [36, 74, 0],
    ],
  ],
  [
    'Front',
    [
      [1, 50, 24],
      [2, 74, 0],
      [3, 50, 24],
      [4, 74, 0],
      [20, 74, 0],
    ],
  ],
  [
    'Left Front Shoulder',
    [
      [1, 14, 6],
      [2, 20, 0],
      [3, 14, 6],
      [4, 20, 0],
      [16, 20, 0],
    ],
  ],
  [
    'Right Front Shoulder',
    [
      [1, 14, 6],
      [2, 20, 0],
      [3, 14, 6],
      [4, 20, 0],
      [16, 20, 0],
    ],
  ],
  [
    'Neckband',
    [
      [1, 102, 0],
      [2, 98, 0],
      [3, 98, 0],
      [5, 98, 0],
    ],
  ],
  [
    'Armbands',
    [
      [1, 86, 0],
      [2, 82, 0],
      [3, 82, 0],
      [5, 82, 0],
    ],
  ],
];

/**
 * Hat, Adult. 1.6 sts and 1.2 rounds are 1 cm. Head 56 cm − 5 % = 53.2 cm = 85.1 sts: 84 = 8 × 10 + 4, so 10 full
 * rounds and one with 4 increases, each after 80 ÷ 4 − 1 = 19. Depth 5¼ in = 13.3 cm, less a band of 4 rounds
 * (3.3 cm) = 10 cm = 12 rounds. Crown 11, sides 12, band 4: 27 rounds.
 */
const hat: ByHand = [
  [
    'Hat',
    [
      [1, 8, 0],
      [2, 16, 0],
      [3, 24, 0],
      [4, 32, 0],
      [5, 40, 0],
      [6, 48, 0],
      [7, 56, 0],
      [8, 64, 0],
      [9, 72, 0],
      [10, 80, 0],
      [11, 84, 0],
      [12, 84, 0],
      [23, 84, 0],
      [24, 84, 0],
      [25, 84, 0],
      [27, 84, 0],
    ],
  ],
];

/**
 * Tee, size M. 1.6 sts and 1.2 rounds are 1 cm. Bust 38 in + 5 cm = 101.5 cm = 162.4 sts: 164 = 4 × 41. Underarm
 * 5 cm = 8 ch. Front 164 ÷ 2 − 8 = 74. Upper arm 11 in + 6 cm = 33.9 cm = 54.3 sts: 54, of which 54 − 8 = 46 are the
 * sleeve's own. Neck 2 × 34 + 2 × 18 = 104. Body (74 − 34) ÷ 2 = 20 increases, sleeves (46 − 18) ÷ 2 = 14, so 6 of
 * the body alone: 104 + 14 × 8 = 216, + 6 × 4 = 240 = 2 × 74 + 2 × 46.
 * Yoke 7½ in + 3.5 cm = 22.55 cm = 27.1 rounds: 27. Of the 26 after the first, 26 × 6 ÷ 20 = 7.8, so 7, are the
 * body's, and 19 shared: the first ends with round 1 + 19 = 20, the second with 27.
 * Body 33 cm less 4 rounds of hem = 29.67 cm = 35.6 rounds: 36, and 4 of hem.
 * Sleeve 46 + 8 = 54; 11.5 cm less 3 rounds of cuff = 9 cm = 10.8 rounds: 11, of which 2 are even before
 * the decreases, and 3 of cuff. Edge 11 in + 3 cm =
 * 30.9 cm = 49.5 sts: 50.
 */
const tee: ByHand = [
  [
    'Yoke',
    [
      [0, 104, 0],
      [1, 104, 4],
      [20, 216, 4],
      [27, 240, 4],
    ],
  ],
  [
    'Body',
    [
      [1, 148, 2],
      [2, 164, 0],
      [3, 164, 0],
      [36, 164, 0],
      [37, 164, 0],
      [40, 164, 0],
    ],
  ],
  [
    'Sleeves',
    [
      [1, 54, 0],
      [2, 54, 0],
      [11, 50, 0],
      [12, 50, 0],
      [14, 50, 0],
    ],
  ],
  [
    'Neckband',
    [
      [1, 104, 0],
      [2, 104, 0],
      [3, 104, 0],
    ],
  ],
];

/** By the name of the example's file. */
export const BY_HAND: Readonly<Record<string, ByHand>> = {
  'boxy-vest': vest,
  'crown-down-hat': hat,
  'raglan-tee': tee,
};
