/** Prints a tree in one line, so that a case of the reader is one line of a table. */
import type {
  Amount,
  CountsAs,
  Item,
  LastPass,
  Noun,
  Place,
  RowNumbers,
  RowsRef,
  RowTree,
  StatedCount,
  StitchRef,
  Stop,
  Times,
} from '../../core/notation/tree.ts';

export function amount(a: Amount): string {
  if (a.kind === 'one') return String(a.value);
  if (a.kind === 'figure') return `#${a.index}`;
  return a.values.map((v) => v ?? '–').join('/');
}

export function stitch(s: StitchRef): string {
  let out = s.special ? `'${s.special}'` : (s.base ?? '');
  if (s.form !== 'plain' && s.form !== 'special') out = out ? `${out}.${s.form}` : s.form;
  if (s.post) out = `${s.post === 'front' ? 'fp' : 'bp'}:${out}`;
  if (s.parts !== null) out = `${s.parts}-${out}`;
  if (s.together > 1) out += `^${s.together}`;
  if (s.beginning) out = `beg:${out}`;
  if (s.half) out = `half:${out}`;
  return out;
}

export function noun(n: Noun): string {
  switch (n.kind) {
    case 'stitch':
      return 'st';
    case 'named':
      return stitch(n.stitch);
    case 'chain':
      return 'ch';
    case 'space':
      return n.chains ? `ch${amount(n.chains)}-sp` : 'sp';
    default:
      return n.kind;
  }
}

function stop(s: Stop): string {
  switch (s.kind) {
    case 'end':
      return s.word;
    case 'before-last':
      return `before-last ${amount(s.amount)} ${noun(s.noun)}`;
    case 'marker':
      return s.before ? `${amount(s.before)} before marker` : 'to-marker';
    case 'before-next':
      return `before-next ${noun(s.noun)}`;
  }
}

export function place(p: Place): string {
  const into = `${p.loop ? ` ${p.loop}-loop` : ''}${p.post ? ` ${p.post}-post` : ''}${p.below ? ` below${p.below}` : ''}`;
  const every = (n: number): string => (n > 1 ? ` every${n}` : '');
  const bare = (): string => {
    switch (p.kind) {
      case 'next':
        return `${p.implied ? '~' : ''}next ${amount(p.amount)} ${p.nouns.map(noun).join('+')}${every(p.every)}`;
      case 'across':
        return `each ${p.nouns.map(noun).join('+')}${every(p.every)} ${stop(p.stop)}`;
      case 'first':
      case 'last':
      case 'skipped':
      case 'between':
        return `${p.kind} ${amount(p.amount)} ${noun(p.noun)}`;
      case 'nth':
        return `nth ${amount(p.nth)} ${noun(p.noun)}`;
      case 'from-hook':
        return `hook ${amount(p.nth)}${p.counts ? ` {${countsAs(p.counts)}}` : ''}`;
      case 'turning-chain':
        return `${p.beginning ? 'beg' : 'turning'}-ch${p.nth ? ` ${amount(p.nth)}` : ''}`;
      case 'of-unit':
        return `${typeof p.nth === 'string' ? p.nth : amount(p.nth)} ${noun(p.noun)} of ${p.which} ${noun(p.unit)}${p.stop ? ` ${stop(p.stop)}` : ''}`;
      case 'own-chain':
        return `own-ch${p.nth ? ` ${amount(p.nth)}` : ''}`;
      case 'evenly':
        return `evenly ${p.nouns.map(noun).join('+')}${p.stop ? ` ${stop(p.stop)}` : ''}`;
      default:
        return p.kind;
    }
  };
  return bare() + into;
}

export function countsAs(c: CountsAs): string {
  const all = c.throughout ? ' throughout' : '';
  if (c.kind === 'stitch') {
    return `=${c.stitch ? stitch(c.stitch) : 'st'}${c.chains ? `+ch${amount(c.chains)}` : ''}${all}`;
  }
  return c.kind === 'nothing' ? `=0${all}` : `=sp${all}`;
}

function times(t: Times): string {
  return t.kind === 'to' ? `to ${stop(t.stop)}` : `${t.more ? '+' : 'x'}${amount(t.amount)}`;
}

function last(l: LastPass): string {
  if (l.kind === 'stop-at') return ` last:at${l.index}`;
  return ` last:${l.kind}(${items(l.items)})`;
}

function rows(r: RowsRef): string {
  const kind = r.kind !== 'pattern' && r.round ? 'rnd' : 'row';
  switch (r.kind) {
    case 'numbers':
      return `${kind} ${amount(r.first)}-${amount(r.last)}`;
    case 'list':
      return `${kind} ${r.numbers.map(amount).join(',')}`;
    case 'last':
      return `${kind} last ${amount(r.amount)}`;
    case 'titled':
      return `${kind} "${r.title}"`;
    case 'pattern':
      return 'pattern';
  }
}

export function items(list: readonly Item[]): string {
  return list.map(item).filter(Boolean).join('; ');
}

function item(i: Item): string {
  switch (i.type) {
    case 'chain':
      return `ch ${amount(i.amount)}${i.counts ? ` {${countsAs(i.counts)}}` : ''}`;
    case 'work':
      return `${amount(i.amount)} ${stitch(i.stitch)}${i.over ? ` over ${amount(i.over)}` : ''} @ ${i.places.map(place).join(' & ')}${i.layers ? ' through layers' : ''}`;
    case 'group':
      return `(${items(i.items)}) @ ${i.places.map(place).join(' & ')}`;
    case 'skip':
      return `sk${i.behind ? ' behind' : ''} ${i.places.map(place).join(' & ')}${i.counts ? ` {${countsAs(i.counts)}}` : ''}`;
    case 'repeat':
      return `${i.mark === 'star' ? '*' : ''}[${items(i.items)}] ${times(i.times)}${i.last ? last(i.last) : ''}`;
    case 'again':
      return `again[${items(i.items)}] ${times(i.times)}`;
    case 'turn':
      return i.not ? 'no-turn' : 'turn';
    case 'join':
      return `${i.not ? 'no-join' : 'join'}${i.stitch ? ` ${stitch(i.stitch)}` : ''}${i.place ? ` @ ${place(i.place)}` : ''}`;
    case 'fasten-off':
      return 'fasten-off';
    case 'attach':
      return `attach${i.stitch ? ` ${stitch(i.stitch)}` : ''}${i.place ? ` @ ${place(i.place)}` : ''}`;
    case 'unworked':
      return `unworked ${i.amount ? amount(i.amount) : 'rem'} ${noun(i.noun)}`;
    case 'marker':
      return `marker ${i.action}${i.place ? ` @ ${place(i.place)}` : ''}`;
    case 'colour':
      return `colour ${i.name}`;
    case 'loops':
      return `loops ${i.loop ?? ''}${i.below ? ` below${i.below}` : ''}`;
    case 'ring':
      return i.chains ? `ring ${amount(i.chains)}` : 'ring';
    case 'other-side':
      return 'other-side';
    case 'layers':
      return 'layers';
    case 'earlier':
      return `earlier ${i.row}`;
    case 'aside':
      return 'aside';
    case 'unread':
      return 'UNREAD';
    case 'rows-again': {
      const until = i.until ? ` until ${i.until.values.join('/')}${i.until.unit}` : '';
      const ending =
        i.endingWith === null
          ? ''
          : ` end ${typeof i.endingWith === 'string' ? i.endingWith : amount(i.endingWith)}`;
      const left = i.left ? ` until ${amount(i.left)} sts` : '';
      return `rep ${rows(i.rows)}${i.times ? ` x${amount(i.times)}` : ''}${until}${left}${ending}`;
    }
    case 'even':
      return `even ${i.rows ? amount(i.rows) : ''}${i.stitch ? ` ${stitch(i.stitch)}` : ''}${i.until ? `until ${i.until.values.join('/')}${i.until.unit}` : ''}`;
    case 'shaping':
      return `${i.change} ${amount(i.amount)} ${i.ends}${i.now ? ' now' : ''}${i.schedule.map((s) => ` every ${amount(s.every)}${s.times ? ` x${amount(s.times)}` : ''}`).join('')}${i.until ? ` until ${amount(i.until)}` : ''}`;
    case 'as-piece':
      return `as ${i.piece}${i.upTo === null ? '' : i.upTo === 'mark' ? ' to-mark' : ` to ${rows(i.upTo)}`}${i.reversed ? ' reversed' : ''}`;
    case 'mark':
      return `mark ${i.sign}`;
  }
}

function numbers(n: RowNumbers): string {
  switch (n.kind) {
    case 'one':
      return ` ${amount(n.number)}`;
    case 'range':
      return ` ${amount(n.first)}-${amount(n.last)}`;
    case 'list':
      return ` ${n.numbers.map(amount).join(',')}`;
    case 'onward':
      return ` ${amount(n.start)}+${n.step}n`;
  }
}

export function count(s: StatedCount): string {
  const parts = s.parts.map((p) => `${amount(p.amount)}${p.noun ? ` ${noun(p.noun)}` : ''}`);
  return `{${parts.join(', ')}${s.turningChain ? ` ${s.turningChain} tch` : ''}}`;
}

/** Label, items, counts and fact codes of a row. */
export function row(r: RowTree): string {
  const label = r.label
    ? `${r.label.kind}${r.label.numbers ? numbers(r.label.numbers) : ''}${r.label.side ? ` ${r.label.side}` : ''}: `
    : '';
  const only = r.only ? `<${r.only.except ? 'others' : r.only.labels.join('|')}> ` : '';
  const counts = r.counts.map(count).join(' ');
  const facts = r.facts.map((f) => `!${f.code}`).join(' ');
  return [only + label + items(r.items), counts, facts].filter((part) => part !== '').join(' ');
}
