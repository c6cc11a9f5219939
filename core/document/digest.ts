/**
 * SHA-256, so that a picture can be named by what it holds without leaving `core`. After FIPS 180-4, §6.2.
 * For naming, not for secrets.
 */

/** First 32 bits of the fractional part of the `root`-th root of the first `n` primes (FIPS 180-4, §4.2.2, §5.3.3). */
function fractions(n: number, root: number): Uint32Array {
  const primes: number[] = [];
  for (let candidate = 2; primes.length < n; candidate++) {
    if (primes.every((prime) => candidate % prime !== 0)) primes.push(candidate);
  }
  return Uint32Array.from(primes, (prime) => (prime ** (1 / root) % 1) * 2 ** 32);
}

const ROUND = fractions(64, 3);
const START = fractions(8, 2);
const BLOCK = 64;

const turn = (word: number, by: number): number => (word >>> by) | (word << (32 - by));

/** The message with its closing bit, zeros and length in bits. */
function padded(bytes: Uint8Array): DataView {
  const whole = new Uint8Array(Math.ceil((bytes.length + 9) / BLOCK) * BLOCK);
  whole.set(bytes);
  whole[bytes.length] = 0x80;
  const view = new DataView(whole.buffer);
  view.setBigUint64(whole.length - 8, BigInt(bytes.length) * 8n);
  return view;
}

/** SHA-256 of `bytes` as 64 hexadecimal digits. */
export function sha256(bytes: Uint8Array): string {
  const view = padded(bytes);
  const words = new Uint32Array(64);
  const state = Uint32Array.from(START);
  for (let block = 0; block < view.byteLength; block += BLOCK) {
    for (let t = 0; t < 64; t++) {
      if (t < 16) {
        words[t] = view.getUint32(block + t * 4);
        continue;
      }
      const near = words[t - 2]!;
      const far = words[t - 15]!;
      const s0 = turn(far, 7) ^ turn(far, 18) ^ (far >>> 3);
      const s1 = turn(near, 17) ^ turn(near, 19) ^ (near >>> 10);
      words[t] = words[t - 16]! + s0 + words[t - 7]! + s1;
    }
    let [a, b, c, d, e, f, g, h] = state as unknown as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    for (let t = 0; t < 64; t++) {
      const s1 = turn(e, 6) ^ turn(e, 11) ^ turn(e, 25);
      const first = (h + s1 + ((e & f) ^ (~e & g)) + ROUND[t]! + words[t]!) | 0;
      const s0 = turn(a, 2) ^ turn(a, 13) ^ turn(a, 22);
      const second = (s0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      h = g;
      g = f;
      f = e;
      e = (d + first) | 0;
      d = c;
      c = b;
      b = a;
      a = (first + second) | 0;
    }
    [a, b, c, d, e, f, g, h].forEach((word, at) => {
      state[at] = state[at]! + word;
    });
  }
  return Array.from(state, (word) => word.toString(16).padStart(8, '0')).join('');
}
