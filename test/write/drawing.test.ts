/** Every kind of node that can stand in the manuscript is drawn by something: one without would stop the editor. */
import type { NodeType } from 'prosemirror-model';
import { expect, test } from 'vitest';
import { schema } from '../../core/document/schema.ts';
import { ELSEWHERE } from '../../renderer/desk/places.ts';
import { drawings } from '../../renderer/write/drawing/index.ts';
import { LiveParts } from '../../renderer/write/live.ts';
import { Popups } from '../../renderer/write/popups.ts';

/** Kinds that a kind may hold, by its content expression. */
function within(type: NodeType, seen = new Set<string>()): Set<string> {
  for (const kind of Object.values(schema.nodes)) {
    const named = new RegExp(
      `\\b(?:${[kind.name, ...(kind.spec.group ?? '').split(' ')].filter(Boolean).join('|')})\\b`,
    );
    if (seen.has(kind.name) || !named.test(type.spec.content ?? '')) continue;
    seen.add(kind.name);
    if (!ELSEWHERE.has(kind.name)) within(kind, seen);
  }
  return seen;
}

test('every kind in the manuscript has a drawing', () => {
  const live = Object.create(LiveParts.prototype) as LiveParts;
  // Text draws itself; photographs are drawn by a plugin of their own.
  const drawn = new Set([...Object.keys(drawings({ live, popups: new Popups() })), 'text', 'photo']);
  const shown = [...within(schema.topNodeType)];
  expect(shown).toContain('figure');
  expect(shown.filter((kind) => !drawn.has(kind))).toEqual([]);
});

test('what is not drawn is a part of the document', () => {
  const parts = (schema.topNodeType.spec.content ?? '').split(' ');
  expect([...ELSEWHERE].filter((part) => !parts.includes(part))).toEqual([]);
});
