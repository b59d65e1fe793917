import { useRef } from 'preact/hooks';

interface OpenProps {
  readonly label: string;
  /** Endings and types, as an input takes them. */
  readonly accept: string;
  readonly onText: (text: string, fileName: string) => void;
}

/** A button that opens a text file of the runner's. */
export const OpenFile = ({ label, accept, onText }: OpenProps) => {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" onClick={() => input.current?.click()}>
        {label}
      </button>
      <input
        ref={input}
        type="file"
        accept={accept}
        hidden
        aria-label={label}
        onChange={async (event) => {
          const element = event.currentTarget;
          const file = element.files?.[0];
          if (file) onText(await file.text(), file.name);
          // So that the same file can be chosen again after it was changed.
          element.value = '';
        }}
      />
    </>
  );
};

/** Some browsers begin to read only after the click was dealt with. */
const KEEP_MS = 60_000;

/** Hands the runner a text or bytes as a file; it never leaves the machine. */
export const saveFile = (name: string, type: string, content: string | Blob): void => {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), KEEP_MS);
};

/** A name that every file system takes. */
export const fileNameOf = (name: string, ending: string): string => {
  const plain = name
    .toLowerCase()
    // Accents fall off, the letters stay.
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/ß/g, 'ss')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return `${plain || 'soundline'}.${ending}`;
};
