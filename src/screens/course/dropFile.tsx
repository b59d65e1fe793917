import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { t } from '../../languages/text.ts';

interface Props {
  readonly onFile: (file: File) => void;
  readonly hasCourse: boolean;
  readonly children?: ComponentChildren;
}

/** A field to drop a file on; for hands without a mouse it is a button. */
export const DropFile = ({ onFile, hasCourse, children }: Props) => {
  const input = useRef<HTMLInputElement>(null);
  const over = useSignal(false);
  return (
    <section
      class="drop"
      aria-label={t('Course file')}
      data-over={over.value}
      onDragOver={(event) => {
        event.preventDefault();
        over.value = true;
      }}
      onDragLeave={() => {
        over.value = false;
      }}
      onDrop={(event) => {
        event.preventDefault();
        over.value = false;
        const file = event.dataTransfer?.files[0];
        if (file) onFile(file);
      }}
    >
      <button type="button" class={hasCourse ? '' : 'main-button'} onClick={() => input.current?.click()}>
        {hasCourse ? t('Another file') : t('Open a course')}
      </button>
      <input
        ref={input}
        type="file"
        accept=".gpx,.jsonl,application/gpx+xml"
        hidden
        aria-label={t('Course file')}
        onChange={(event) => {
          const element = event.currentTarget;
          const file = element.files?.[0];
          if (file) onFile(file);
          element.value = '';
        }}
      />
      <p class="note">
        {t(
          'Or drop it here. GPX with a track or a route; waypoints become stations. Or the log of a past run (.jsonl).',
        )}
      </p>
      {children}
    </section>
  );
};
