import { t } from '../../languages/text.ts';
import type { AloudModel } from '../../session/aloud/aloudModel.ts';
import { span } from '../format.ts';

const timeText = (atS: number): string => (atS < 0 ? `−${span(-atS)}` : span(atS));

/** Everything that the file says, by the plan's clock, each line to be heard at once. */
export const AloudLines = ({ model }: { model: AloudModel }) => {
  const sheet = model.sheet.value;
  if (!sheet.ok) return null;
  return (
    <section class="sheet" aria-label={t('What it says, and when')}>
      <h2>{t('What it says, and when')}</h2>
      <p class="note">{t('Times from the start. Touch a line to hear it.')}</p>
      <ol class="clock-list aloud-lines">
        {sheet.value.lines.map((line) => (
          <li key={`${line.atS} ${line.text}`} class="clock-item">
            <span class="figure clock-time">{timeText(line.atS)}</span>
            <button
              type="button"
              class="link-button"
              lang={line.utterance.text === '' ? undefined : model.language.value}
              onClick={() => void model.listen(line)}
            >
              {line.text}
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
};
