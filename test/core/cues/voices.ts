import type { Voice } from '../../../src/core/cues/voicePort.ts';

/** A voice that says the meaning itself; long 5 s, short 2 s. */
export const plainVoice: Voice = {
  utter: (saying, form) => ({
    text: `${form} ${JSON.stringify(saying)}`,
    parts: [],
    durationS: form === 'long' ? 5 : 2,
  }),
};
