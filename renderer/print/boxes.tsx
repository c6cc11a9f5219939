/** Boxes to tick, several at once, of which a list is made. */

interface BoxesProps<T extends string> {
  readonly legend: string;
  readonly options: readonly (readonly [T, string])[];
  readonly value: readonly T[];
  readonly onChange: (value: readonly T[]) => void;
}

export function Boxes<T extends string>({ legend, options, value, onChange }: BoxesProps<T>) {
  const toggled = (option: T) =>
    value.includes(option) ? value.filter((other) => other !== option) : [...value, option];
  return (
    <fieldset className="choices boxes">
      <legend>{legend}</legend>
      {options.map(([option, words]) => (
        <label key={option} className="choice">
          <input
            type="checkbox"
            checked={value.includes(option)}
            onChange={() => onChange(toggled(option))}
          />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  );
}
