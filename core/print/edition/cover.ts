/** The cover: what the pattern is, for whom, by whom, and the facts a buyer looks for first. */
import { sizeKeyOf } from '../../study/index.ts';
import { hookLabel } from '../../trade/hooks.ts';
import { level } from '../../trade/levels.ts';
import { type Cover, type Entry, entry, numbers, picture, type Text, words } from '../content.ts';
import { weightWords } from './materials.ts';
import { measurementsFor, measurementWords } from './measurements.ts';
import type { Reader } from './reader.ts';
import { inReadersEnglish } from './terms.ts';
import { capitalised, hold, uncapitalised } from './text.ts';

/** Longest construction that stands in the line under the title. */
const ONE_LINE = 90;

export function coverOf(reader: Reader): Cover {
  const { about } = reader.pattern;
  const garment = capitalised(reader.say(about.garment.trim(), null));
  const construction = reader.say(about.construction.trim(), null);
  const short = construction.length <= ONE_LINE && !/[.!?]\s/.test(construction);
  const subtitle = [garment, short ? uncapitalised(construction.replace(/\.$/, '')) : '']
    .filter((text) => text !== '')
    .join(', ');
  const description = reader.say(about.description.trim(), null);
  const designer = about.designer.trim();
  return {
    subtitle: subtitle === '' ? null : words(capitalised(subtitle)),
    byline: designer === '' ? null : words(`by ${designer}`),
    image: about.cover === null ? null : picture(about.cover.id),
    alt: about.cover === null ? '' : reader.say(about.cover.alt.trim(), null),
    summary: [description, short ? '' : construction]
      .filter((text) => text !== '')
      .map((text) => words(hold(text))),
    glance: glanceOf(reader),
  };
}

function glanceOf(reader: Reader): readonly Entry[] {
  const { pattern, alone, sizes, wording, madeFor } = reader;
  const grade = level(pattern.about.level);
  const items: Entry[] = [];
  const add = (label: string, text: Text) => items.push(entry(label, text));
  if (grade !== null) add('Level', `${grade.name} (${inReadersEnglish(grade.meaning, reader)})`);
  if (madeFor !== null) add('Made for', madeFor.name);
  else if (alone) add('Size', pattern.sizes[sizes[0]!]!.label);
  else if (pattern.sizes.length > 0) {
    add(pattern.sizes.length === 1 ? 'Size' : 'Sizes', [numbers(sizeKeyOf(pattern.sizes))]);
  }
  const measurements = measurementsFor(reader);
  const body = measurements.find((one) => one.of === 'body');
  const finished = measurements.find(
    (one) => one.of === 'piece' && one.values.some((v) => v !== null && 'length' in v),
  );
  // "To fit bust from" and "up to": both ends of what each size is for.
  const measureOf = (line: string) => {
    const own = pattern.lines.find(({ id }) => id === line);
    return own?.kind === 'body' ? own.measure : null;
  };
  const bodies =
    body === undefined
      ? []
      : measurements
          .filter((one) => one.of === 'body' && measureOf(one.line) === measureOf(body.line))
          .slice(0, 2);
  for (const one of [...bodies, finished]) {
    if (one === undefined) continue;
    const named = reader.say(one.heading, one.line);
    add(
      one.of === 'body' && !/\bfit\b/iu.test(named) ? `To fit ${uncapitalised(named)}` : capitalised(named),
      measurementWords(one, reader),
    );
  }
  const weights = [...new Set(pattern.yarns.flatMap((yarn) => (yarn.weight === null ? [] : [yarn.weight])))]
    .map((weight) => weightWords(weight, reader))
    .filter((label) => label !== '');
  if (weights.length > 0) add('Yarn', capitalised(weights.join('; ')));
  if (pattern.hooks.length > 0) {
    add(
      pattern.hooks.length === 1 ? 'Hook' : 'Hooks',
      pattern.hooks.map((hook) => hookLabel(hook.mm, reader.terms).replaceAll(' ', '\u00A0')).join(', '),
    );
  }
  add('Terms', `${wording.termsNote} throughout`);
  return items;
}
