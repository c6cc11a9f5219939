/** The outline of the pattern, left of all places. */
import { useDeskView } from '../shell/hooks.ts';

export function Outline() {
  const pieces = useDeskView((view) => view.pattern.pieces);
  return (
    <ul>
      {pieces.map((piece) => (
        <li key={piece.id}>{piece.name}</li>
      ))}
    </ul>
  );
}
