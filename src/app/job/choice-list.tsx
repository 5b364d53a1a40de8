interface Props {
  readonly label: string;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly text: string }[];
  /** What stands there while nothing is chosen; none where something always is. */
  readonly empty?: string;
  readonly disabled?: boolean;
  readonly onChoose: (value: string) => void;
}

/** The device's own list: it works by finger, key and reader wherever the page does. */
export function ChoiceList({ label, value, options, empty, disabled, onChoose }: Props) {
  return (
    <label className="field">
      <span>{label}</span>
      <select value={value} disabled={disabled} onChange={({ target }) => onChoose(target.value)}>
        {empty === undefined ? null : <option value="">{empty}</option>}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.text}
          </option>
        ))}
      </select>
    </label>
  );
}
