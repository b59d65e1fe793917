import { decimal } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import type { AloudModel } from '../../session/aloud/aloudModel.ts';
import { span } from '../format.ts';
import { fileNameOf, saveFile } from '../parts/files.tsx';
import { canHandOver, handOver } from './handOver.ts';

/** What the file will be, and the buttons that make it. */
export const MakeFile = ({ model }: { model: AloudModel }) => {
  const sheet = model.sheet.value;
  if (!sheet.ok)
    return (
      <p class="field-error" role="status">
        {t(sheet.error)}
      </p>
    );
  const { lines, lengthS, aboutBytes, dropped } = sheet.value;
  const isMaking = model.state.value === 'making';
  const saveMp3 = async (): Promise<void> => {
    const blob = await model.mp3();
    if (blob !== null) saveFile(fileNameOf(model.title.value, 'mp3'), 'audio/mpeg', blob);
  };
  const give = async (): Promise<void> => {
    const blob = await model.mp3();
    if (blob !== null) await handOver(blob, fileNameOf(model.title.value, 'mp3'));
  };
  const saveVtt = async (): Promise<void> => {
    const text = await model.vtt();
    if (text !== null) saveFile(fileNameOf(model.title.value, 'vtt'), 'text/vtt', text);
  };
  return (
    <>
      <p>
        {t('{n} calls and tones, {length}, about {size} MB.', {
          n: lines.length,
          length: span(lengthS),
          size: decimal(aboutBytes / 1e6, 1),
        })}{' '}
        {dropped > 0 && t('Without room between others and left out: {n}.', { n: dropped })}
      </p>
      <div class="buttons">
        <button type="button" class="main-button" disabled={isMaking} onClick={() => void saveMp3()}>
          {t('Save as MP3')}
        </button>
        {canHandOver() && (
          <button type="button" disabled={isMaking} onClick={() => void give()}>
            {t('Give it to another app')}
          </button>
        )}
        <button type="button" disabled={isMaking} onClick={() => void saveVtt()}>
          {t('Save the words (WebVTT)')}
        </button>
      </div>
      <p class="note" role="status">
        {model.trouble.value !== null ? t(model.trouble.value) : isMaking ? t('A moment …') : ''}
      </p>
    </>
  );
};
