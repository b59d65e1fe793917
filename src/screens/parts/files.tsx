import { useRef } from 'preact/hooks';

interface PickProps {
  readonly label: string;
  /** What the file is, where the button alone does not tell. */
  readonly about?: string;
  /** Endings and types, as an input takes them. */
  readonly accept: string;
  readonly onFile: (file: File) => void;
  /** The one button of its screen. */
  readonly main?: boolean;
}

/** A button that asks for a file of the runner's. */
export const PickFile = ({ label, about = label, accept, onFile, main = false }: PickProps) => {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" class={main ? 'main-button' : ''} onClick={() => input.current?.click()}>
        {label}
      </button>
      <input
        ref={input}
        type="file"
        accept={accept}
        hidden
        aria-label={about}
        onChange={(event) => {
          const element = event.currentTarget;
          const file = element.files?.[0];
          if (file) onFile(file);
          // So that the same file can be chosen again after it was changed.
          element.value = '';
        }}
      />
    </>
  );
};

interface OpenProps {
  readonly label: string;
  readonly accept: string;
  readonly onText: (text: string, fileName: string) => void;
}

/** A button that opens a text file of the runner's. */
export const OpenFile = ({ label, accept, onText }: OpenProps) => (
  <PickFile
    label={label}
    accept={accept}
    onFile={async (file) => {
      onText(await file.text(), file.name);
    }}
  />
);

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
