interface Props {
  readonly label: string;
  readonly onFile: (file: File) => void;
}

/** Takes a file that was exported; the same one may be chosen twice. */
export function FileButton({ label, onFile }: Props) {
  return (
    <label className="button file">
      {label}
      <input
        type="file"
        accept="application/json,.json"
        className="for-readers"
        onChange={({ target }) => {
          const file = target.files?.[0];
          target.value = '';
          if (file !== undefined) onFile(file);
        }}
      />
    </label>
  );
}
