import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { t } from '../../languages/text.ts';
import { PickFile } from '../parts/files.tsx';

interface Props {
  readonly onFile: (file: File) => void;
  readonly hasCourse: boolean;
  readonly children?: ComponentChildren;
}

/** A field to drop a file on; for hands without a mouse it is a button. */
export const DropFile = ({ onFile, hasCourse, children }: Props) => {
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
      <PickFile
        label={hasCourse ? t('Another file') : t('Open a course')}
        about={t('Course file')}
        accept=".gpx,.jsonl,application/gpx+xml"
        onFile={onFile}
        main={!hasCourse}
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
