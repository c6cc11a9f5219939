/** Which kept versions stay: all of a day, one a day for a month, one a month, and not too many bytes. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { KeptVersion } from '../../app/host/host.ts';
import { versionsToStay } from '../../app/services/versions.ts';

const NOW = Date.parse('2024-06-15T12:00:00.000Z');
const version = (time: string, bytes = 1000): KeptVersion => ({ id: time, time, bytes });
const stays = (times: readonly string[], bytes = 1000): readonly string[] => [
  ...versionsToStay(
    [...times]
      .sort()
      .reverse()
      .map((time) => version(time, bytes)),
    NOW,
  ),
];

describe('versions', () => {
  test('of the last day all stay', () => {
    const times = ['2024-06-15T11:59:00.000Z', '2024-06-15T11:58:00.000Z', '2024-06-14T12:00:01.000Z'];
    expect(stays(times)).toEqual(times);
  });

  test('of a day before, the last stays; of a month before the last month, the last', () => {
    expect(
      stays([
        '2024-06-10T08:00:00.000Z',
        '2024-06-10T18:00:00.000Z',
        '2024-06-09T18:00:00.000Z',
        '2024-03-01T08:00:00.000Z',
        '2024-03-28T08:00:00.000Z',
        '2023-03-28T08:00:00.000Z',
      ]),
    ).toEqual([
      '2024-06-10T18:00:00.000Z',
      '2024-06-09T18:00:00.000Z',
      '2024-03-28T08:00:00.000Z',
      '2023-03-28T08:00:00.000Z',
    ]);
  });

  test('of very large files, the newest three stay whatever they take', () => {
    const times = ['05', '04', '03', '02', '01'].map((minute) => `2024-06-15T11:${minute}:00.000Z`);
    expect(stays(times, 250 * 1024 * 1024)).toEqual(times.slice(0, 3));
    expect(stays(times, 1000)).toEqual(times);
  });

  test('the newest always stays, what stays once stays at the next look, and bytes are bounded', () => {
    const moment = fc
      .integer({ min: 0, max: 400 * 24 * 3600 })
      .map((s) => new Date(NOW - s * 1000).toISOString());
    fc.assert(
      fc.property(
        fc.uniqueArray(moment, { minLength: 1, maxLength: 60 }),
        fc.integer({ min: 1, max: 2 ** 28 }),
        (times, bytes) => {
          const kept = stays(times, bytes);
          expect(kept[0]).toBe([...times].sort().at(-1));
          expect(stays(kept, bytes)).toEqual(kept);
          if (kept.length > 3) expect(kept.length * bytes).toBeLessThanOrEqual(512 * 1024 * 1024);
        },
      ),
    );
  });
});
