/** Findings of the review stand under the part of the pattern that they are in, and lead to the place that shows it. */
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../core/finding.ts';
import { panelPattern } from '../../core/outlines/index.ts';
import { groupsOf } from '../../core/review/parts.ts';
import { keysOf, placeFor } from '../../renderer/review/groups.ts';

const pattern = panelPattern({
  title: 'Trial',
  terms: 'us',
  units: 'metric',
  date: '2024-05-01',
  gauge: { stitch: 't2', stitches: 16, rows: 12, over: { value: 10, unit: 'cm' }, hookMm: 4.5 },
});
const front = pattern.pieces[1]!;

const finding = (
  node: string | null,
  severity: Finding['severity'] = 'warning',
  code = 'count-drifts',
): Finding => ({
  code,
  severity,
  where: { node, from: 0, to: 0 },
  sizes: [],
  message: '',
  detail: null,
  fix: null,
});

describe('findings by the parts of the pattern', () => {
  test.each([
    [null, 'whole', 'write'],
    ['cover:title', 'cover', 'write'],
    ['cover:care', 'closing', 'write'],
    [pattern.lines[0]!.id, 'sizes', 'sizes'],
    [pattern.sizes[0]!.id, 'sizes', 'sizes'],
    [pattern.gauges[0]!.id, 'materials', 'materials'],
    ['abbreviation:sc', 'materials', 'materials'],
    ['notes:0', 'notes', 'write'],
    ['finishing:2', 'finishing', 'write'],
    [front.id, 'piece', 'write'],
    [front.blocks[0]!.id, 'piece', 'write'],
  ] as const)('%s is in “%s” and shown in “%s”', (node, part, place) => {
    const one = finding(node);
    const [group] = groupsOf(pattern, [one]);
    expect(group?.part).toBe(part);
    expect(placeFor(part, one)).toBe(place);
  });

  test('a gauge that is missing altogether is given in Materials', () => {
    expect(placeFor('whole', finding(null, 'error', 'gauge-not-given'))).toBe('materials');
  });

  test('pieces come in their order, mistakes before the rest', () => {
    const groups = groupsOf(pattern, [
      finding(front.id, 'note'),
      finding(front.blocks[0]!.id, 'error'),
      finding(pattern.pieces[0]!.id),
      finding(null),
    ]);
    expect(groups.map(({ piece, part }) => piece ?? part)).toEqual(['whole', 'Back', 'Front']);
    expect(groups[2]!.findings.map(({ severity }) => severity)).toEqual(['error', 'note']);
  });
});

test('a finding keeps its key when others come before it, and those that are alike differ', () => {
  const [own, twin, other] = [finding('a'), finding('a'), finding('b', 'error', 'row-without-words')];
  const [key, second] = keysOf([own, twin]);
  expect(second).not.toBe(key);
  expect(keysOf([other, own, twin]).slice(1)).toEqual([key, second]);
  expect(new Set(keysOf([other, own, twin])).size).toBe(3);
});
