/** What was understood of an old pattern: its terms with the evidence, pieces, rows, doubts, and offers of figures. */
import type { Brought } from '../../core/intake/bring.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { bringWords } from '../words/bring.ts';
import { shellWords } from '../words/shell.ts';

interface ReviewProps {
  readonly brought: Brought;
  /** How many pictures come along. */
  readonly pictures: number;
  /** The terms are in doubt and nobody has chosen them yet. */
  readonly isAsked: boolean;
  readonly title: string;
  readonly onTitle: (title: string) => void;
  readonly onTerms: (terms: Terms) => void;
  /** Indexes of the offers that are taken. */
  readonly taken: ReadonlySet<number>;
  readonly onTaken: (taken: ReadonlySet<number>) => void;
}

export function Review({ brought, pictures, isAsked, title, onTitle, onTerms, taken, onTaken }: ReviewProps) {
  const { pattern, rows, doubts, leftOut } = brought;
  const { yarns, hooks, notions, gauges, lines } = pattern;
  return (
    <div className="bring-review">
      <p className="bring-rows">{bringWords.rows(rows.followed, rows.written)}</p>
      <label className="field">
        <span>{bringWords.name}</span>
        <input value={title} maxLength={200} onChange={(event) => onTitle(event.target.value)} />
      </label>
      <TermsChoice brought={brought} isAsked={isAsked} onTerms={onTerms} />
      <section aria-labelledby="bring-summary">
        <h3 id="bring-summary">{bringWords.summary}</h3>
        <dl>
          <dt>{bringWords.sizes}</dt>
          <dd>{pattern.sizes.map(({ label }) => label).join(', ')}</dd>
          <dt>{bringWords.pieces}</dt>
          <dd>
            <ul>
              {pattern.pieces.map(({ id, name, make, blocks }) => (
                <li key={id}>
                  {bringWords.piece(
                    name,
                    make,
                    blocks.filter(({ type }) => type === 'row' || type === 'repeat').length,
                  )}
                </li>
              ))}
            </ul>
          </dd>
        </dl>
        <p>{bringWords.parts(yarns.length, hooks.length, notions.length, gauges.length, lines.length)}</p>
        {pictures > 0 && <p>{bringWords.pictures(pictures)}</p>}
        {leftOut.length > 0 && <p className="quiet">{bringWords.leftOut(leftOut)}</p>}
      </section>
      <section aria-labelledby="bring-doubts">
        <h3 id="bring-doubts">
          {doubts.length === 0 ? bringWords.noDoubts : bringWords.doubts(doubts.length)}
        </h3>
        {doubts.length > 0 && <p className="quiet">{bringWords.doubtsNote}</p>}
        <ul className="bring-doubts">
          {doubts.map(({ node, where, words, why }) => (
            <li key={`${node} ${where} ${words} ${why}`}>
              {where !== '' && <strong>{where}</strong>}
              {words !== '' && <q>{words}</q>}
              <p>{why}</p>
            </li>
          ))}
        </ul>
      </section>
      <Offers brought={brought} taken={taken} onTaken={onTaken} />
    </div>
  );
}

function TermsChoice({ brought, isAsked, onTerms }: Pick<ReviewProps, 'brought' | 'isAsked' | 'onTerms'>) {
  const { pattern, market } = brought;
  return (
    <fieldset className="choices">
      <legend>{bringWords.terms}</legend>
      <p className={isAsked ? 'form-fault' : 'quiet'}>
        {isAsked ? bringWords.termsAsk : market.sure ? bringWords.termsSure : ''}
      </p>
      <ul className="quiet">
        {market.evidence.slice(0, 4).map(({ terms, why }) => (
          <li key={`${terms} ${why}`}>{why}</li>
        ))}
      </ul>
      {(['us', 'uk'] as const).map((terms) => (
        <label key={terms} className="choice">
          <input
            type="radio"
            name="bring-terms"
            checked={!isAsked && pattern.terms === terms}
            onChange={() => onTerms(terms)}
          />
          <span>{shellWords.terms(terms)}</span>
        </label>
      ))}
    </fieldset>
  );
}

function Offers({ brought, taken, onTaken }: Pick<ReviewProps, 'brought' | 'taken' | 'onTaken'>) {
  const { offers } = brought;
  if (offers.length === 0) return null;
  const toggle = (i: number) => {
    const next = new Set(taken);
    if (!next.delete(i)) next.add(i);
    onTaken(next);
  };
  const all = taken.size === offers.length;
  return (
    <fieldset className="choices">
      <legend>{bringWords.offers}</legend>
      <p className="quiet">{bringWords.offersNote}</p>
      <label className="choice">
        <input
          type="checkbox"
          checked={all}
          onChange={() => onTaken(new Set(all ? [] : offers.map((_, i) => i)))}
        />
        <span>{bringWords.allOffers}</span>
      </label>
      {offers.map(({ node, from, line, text }, i) => (
        <label key={`${node} ${from}`} className="choice">
          <input type="checkbox" checked={taken.has(i)} onChange={() => toggle(i)} />
          <span>{bringWords.offer(text, line)}</span>
        </label>
      ))}
    </fieldset>
  );
}
