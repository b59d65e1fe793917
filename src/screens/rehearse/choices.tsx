import type { Signal } from '@preact/signals';
import { type Message, message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import { RATES, type RehearseModel, SOURCES, type Source } from '../../session/rehearsal/rehearseModel.ts';

const SOURCE_NAMES: Record<Source, Message> = { demo: message('Demo race'), plan: message('My plan') };

export const SourceChoice = ({ value }: { value: Signal<Source> }) => (
  <fieldset class="choice">
    <legend>{t('Race')}</legend>
    {SOURCES.map((source) => (
      <label key={source}>
        <input
          type="radio"
          name="source"
          checked={value.value === source}
          onChange={() => {
            value.value = source;
          }}
        />
        <span>{t(SOURCE_NAMES[source])}</span>
      </label>
    ))}
  </fieldset>
);

export const RateChoice = ({ model }: { model: RehearseModel }) => (
  <fieldset class="choice">
    <legend>{t('Rate||of a replay')}</legend>
    {RATES.map((rate) => (
      <label key={rate}>
        <input
          type="radio"
          name="rate"
          checked={model.rate.value === rate}
          onChange={() => model.choose(rate)}
        />
        <span>{rate}×</span>
      </label>
    ))}
  </fieldset>
);
