/** Small dialogs: how the studio looks and whether it looks at spelling, and about the program. */
import type { Settings } from '../../app/host/host.ts';
import { Modal } from '../parts/modal.tsx';
import { useStudio, useStudioView } from '../shell/hooks.ts';
import { aboutWords, themeWords } from '../words/dialogs.ts';
import { shellWords } from '../words/shell.ts';

function CloseButton({ onClose }: { readonly onClose: () => void }) {
  return (
    <button type="button" className="chief" onClick={onClose}>
      {shellWords.close}
    </button>
  );
}

export function ThemeChoice() {
  const studio = useStudio();
  const theme = useStudioView((view) => view.settings.theme);
  const spelling = useStudioView((view) => view.settings.spelling);
  const close = () => studio.show(null);
  return (
    <Modal title={themeWords.title} onClose={close} buttons={<CloseButton onClose={close} />}>
      <fieldset className="choices">
        <legend>{themeWords.theme}</legend>
        {(Object.keys(themeWords.options) as Settings['theme'][]).map((option) => (
          <label key={option} className="choice">
            <input
              type="radio"
              name="theme"
              checked={theme === option}
              onChange={() => void studio.saveSettings({ theme: option })}
            />
            <span>{themeWords.options[option]}</span>
          </label>
        ))}
      </fieldset>
      <fieldset className="choices">
        <legend>{themeWords.writing}</legend>
        <label className="choice">
          <input
            type="checkbox"
            checked={spelling}
            onChange={(event) => void studio.saveSettings({ spelling: event.target.checked })}
          />
          <span>
            {themeWords.spelling}
            <small className="quiet">{themeWords.spellingNote}</small>
          </span>
        </label>
      </fieldset>
    </Modal>
  );
}

export function About() {
  const studio = useStudio();
  const version = useStudioView((view) => view.start.about.version);
  const close = () => studio.show(null);
  return (
    <Modal title={aboutWords.title} onClose={close} buttons={<CloseButton onClose={close} />}>
      <div className="dialog-text">
        <p>{aboutWords.version(version)}</p>
        <p>{aboutWords.what}</p>
        <p>{aboutWords.private}</p>
        <p>{aboutWords.fonts}</p>
        <p>{aboutWords.data}</p>
      </div>
    </Modal>
  );
}
