/** The bar: the pattern's title and whether it is saved, the places, and how the pattern is read. */
import { titleOf } from '../../core/document/title.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import type { Units } from '../../core/trade/units.ts';
import { useCommands } from '../commands/context.ts';
import { PLACE_WORDS, shellWords } from '../words/shell.ts';
import { useDesk, useDeskView, useStudio, useStudioView } from './hooks.ts';
import { useMedia } from './media.ts';
import type { Place } from './studio.ts';

/** Where it takes two lines, and three; `shell.css` says the same. */
const TWO_LINES = '(max-width: 68rem)';
const THREE_LINES = '(max-width: 34rem)';

export function Bar() {
  const isInTwo = useMedia(TWO_LINES);
  const isInThree = useMedia(THREE_LINES);
  const places = <Places key="places" />;
  const switches = <Switches key="switches" />;
  const menu = <MenuButton key="menu" />;
  return (
    <header className="bar">
      <Title />
      {isInThree ? [menu, switches, places] : isInTwo ? [switches, menu, places] : [places, switches, menu]}
    </header>
  );
}

function Title() {
  const title = useDeskView((view) => view.pattern.about.title);
  const isSaved = useDeskView((view) => view.saved === view.document);
  const file = useDeskView((view) => view.file);
  const saving = useStudioView((view) => view.saving);
  const name = titleOf({ title });
  const state = saving
    ? shellWords.saving
    : file === null
      ? shellWords.neverSaved
      : isSaved
        ? shellWords.saved
        : shellWords.notSaved;
  return (
    <div className="bar-title">
      <h1 title={name}>{name}</h1>
      <p data-testid="file-state">{file === null ? state : `${file.ref.name} · ${state}`}</p>
    </div>
  );
}

function Places() {
  const studio = useStudio();
  const current = useStudioView((view) => view.place);
  const errors = useDeskView((view) => view.report).findings.filter(
    ({ severity }) => severity === 'error',
  ).length;
  return (
    <nav className="place-tabs" aria-label={shellWords.places}>
      {(Object.keys(PLACE_WORDS) as Place[]).map((place) => (
        <a
          key={place}
          href={`#${place}`}
          aria-current={place === current ? 'page' : undefined}
          onClick={(event) => {
            event.preventDefault();
            studio.go(place);
          }}
        >
          <span data-words={PLACE_WORDS[place]}>{PLACE_WORDS[place]}</span>
          {place === 'review' && errors > 0 && <span className="tally">{errors}</span>}
        </a>
      ))}
    </nav>
  );
}

function Switches() {
  const desk = useDesk();
  const reading = useDeskView((view) => view.reading);
  return (
    <div className="switches">
      <fieldset aria-label={shellWords.termsLabel}>
        {(['us', 'uk'] satisfies Terms[]).map((terms) => (
          <button
            key={terms}
            type="button"
            aria-pressed={reading.terms === terms}
            onClick={() => desk.read({ terms })}
          >
            {shellWords.terms(terms)}
          </button>
        ))}
      </fieldset>
      <fieldset aria-label={shellWords.unitsLabel}>
        {(['metric', 'imperial'] satisfies Units[]).map((units) => (
          <button
            key={units}
            type="button"
            aria-pressed={reading.units === units}
            onClick={() => desk.read({ units })}
          >
            {shellWords.units(units)}
          </button>
        ))}
      </fieldset>
    </div>
  );
}

function MenuButton() {
  const commands = useCommands();
  return (
    <button type="button" onClick={() => commands.run('commands')}>
      {shellWords.menu}
    </button>
  );
}
