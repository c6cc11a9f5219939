/** The start screen: a new pattern, a file, one of the last files, an example, work that was recovered. */
import { useStudio, useStudioView } from '../shell/hooks.ts';
import { shellWords } from '../words/shell.ts';

export function StartScreen() {
  const studio = useStudio();
  const examples = useStudioView((view) => view.start.examples);
  return (
    <main>
      <h1>{shellWords.product}</h1>
      <ul>
        {examples.map((example) => (
          <li key={example.name}>
            <button type="button" onClick={() => void studio.openExample(example.name)}>
              {example.title}
            </button>
          </li>
        ))}
      </ul>
    </main>
  );
}
