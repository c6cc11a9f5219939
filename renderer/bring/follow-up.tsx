/** In the review: what was brought in and not looked at yet, and typed numbers that could be figures. */
import { useEffect, useRef, useState } from 'react';
import type { Offer } from '../../core/intake/offers.ts';
import { useDesk, useDeskView, useStudio } from '../shell/hooks.ts';
import { bringWords } from '../words/bring.ts';
import { reviewWords } from '../words/review.ts';
import { settleDoubt, takeFigures } from './edits.ts';

/** Doubts of bringing in, each with the way there, until the maker has looked at it. */
export function DoubtsLeft() {
  const studio = useStudio();
  const desk = useDesk();
  const doubts = useDeskView((view) => view.pattern.workbook.doubts);
  if (doubts.length === 0) return null;
  return (
    <section aria-labelledby="review-doubts" className="review-group">
      <h3 id="review-doubts">
        {bringWords.broughtIn} <small className="quiet">{bringWords.doubts(doubts.length)}</small>
      </h3>
      <ul>
        {doubts.map(({ node, why }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two doubts may be alike
          <li key={`${node} ${why} ${index}`} className="review-item warning">
            <p>{why}</p>
            <div className="review-buttons">
              {node !== '' && (
                <button
                  type="button"
                  aria-label={reviewWords.goTo(why)}
                  onClick={() => studio.goTo(node, 0, 0)}
                >
                  {reviewWords.go}
                </button>
              )}
              <button
                type="button"
                aria-label={bringWords.lookedAt(why)}
                onClick={() => desk.dispatch(settleDoubt(desk.view().state, index))}
              >
                {bringWords.done}
              </button>
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Looks for offers when asked, by a worker; they are taken one by one or all. */
export function FigureOffers() {
  const studio = useStudio();
  const desk = useDesk();
  const sizes = useDeskView((view) => view.pattern.sizes.length);
  const document = useDeskView((view) => view.document);
  const [found, setFound] = useState<{
    readonly offers: readonly Offer[];
    readonly of: typeof document;
  } | null>(null);
  const [isLooking, setLooking] = useState(false);
  const worker = useRef<Worker | null>(null);
  useEffect(() => () => worker.current?.terminate(), []);
  if (sizes < 2) return null;
  const look = () => {
    worker.current?.terminate();
    const own = new Worker(new URL('./offers-worker.ts', import.meta.url), { type: 'module' });
    worker.current = own;
    setLooking(true);
    const of = desk.view().document;
    own.onmessage = ({ data }: MessageEvent<readonly Offer[]>) => {
      own.terminate();
      setLooking(false);
      setFound({ offers: data, of });
      studio.tell(bringWords.offersFound(data.length));
    };
    own.postMessage(of.toJSON());
  };
  const take = (offers: readonly Offer[]) => {
    const transaction = takeFigures(desk.view().state, offers);
    if (transaction === null) studio.tell(reviewWords.notFixed);
    else desk.dispatch(transaction);
    setFound(null);
    look();
  };
  // Offers are of one state of the pattern; after another edit they are looked for again.
  const offers = found !== null && found.of === document ? found.offers : null;
  return (
    <section aria-labelledby="review-figures" className="review-group">
      <h3 id="review-figures">{bringWords.offers}</h3>
      <p className="quiet">{bringWords.offersNote}</p>
      <div className="review-buttons">
        <button type="button" onClick={look} disabled={isLooking}>
          {isLooking ? bringWords.looking : bringWords.look}
        </button>
        {offers !== null && offers.length > 1 && (
          <button type="button" onClick={() => take(offers)}>
            {bringWords.takeAll(offers.length)}
          </button>
        )}
      </div>
      {offers !== null && (
        <>
          <p>{bringWords.offersFound(offers.length)}</p>
          <ul>
            {offers.map((offer) => (
              <li key={`${offer.node} ${offer.from}`} className="review-item note">
                <p>{bringWords.offer(offer.text, offer.line)}</p>
                <div className="review-buttons">
                  <button
                    type="button"
                    aria-label={reviewWords.goTo(offer.text)}
                    onClick={() => studio.goTo(offer.node, offer.from, offer.to)}
                  >
                    {reviewWords.go}
                  </button>
                  <button type="button" onClick={() => take([offer])}>
                    {bringWords.takeOne(offer.text)}
                  </button>
                </div>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
