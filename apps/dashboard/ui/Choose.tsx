interface Props {
  name: string;
  label: string;
  chosen?: string;
  options: readonly (readonly [value: string, words: string])[];
}

/** One choice of a row of filters, which lives in the address under its name. */
export function Choose({ name, label, chosen = "", options }: Props) {
  return (
    <div className="field">
      <label htmlFor={name}>{label}</label>
      <select id={name} name={name} defaultValue={chosen}>
        {options.map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
