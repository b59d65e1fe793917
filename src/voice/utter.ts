import type { Saying } from '../core/cues/saying.ts';
import type { Form, Part, Tone, Utterance, Voice } from '../core/cues/voicePort.ts';
import { clipSpan, type Pack } from './packs/pack.ts';
import { aloneOf } from './tones/alone.ts';
import { toneDurationS } from './tones/family.ts';
import { toneOf } from './tones/opening.ts';
import { textOf, type Words } from './words/words.ts';

/** Silence between two clips of one sentence: just a breath, since they were cut out of running speech. */
export const JOIN_S = 0.01;
/** Silence between two sentences. */
const STOP_S = 0.24;
/** Silence between a tone and the first word: with 'marker' the word begins within 0.25 s of the call. */
const AFTER_TONE_S = 0.12;

/** A tone as a call of its own. */
export const toneAlone = (tone: Tone): Utterance => ({
  text: '',
  parts: [{ sound: { tone }, offsetS: 0 }],
  durationS: toneDurationS(tone),
});

/**
 * The voice over a pack: from meaning to words, to clips, to parts with their begins. Pure. A clip that the pack lacks
 * is left out, so that a call is never lost for a word; a test walks everything that can be said and finds none.
 */
export const voiceOf = (pack: Pack, words: Words): Voice => ({
  alone: (saying) => {
    const tone = aloneOf(saying);
    return tone === null ? null : toneAlone(tone);
  },
  utter: (saying: Saying, form: Form): Utterance => {
    const sentences = words.say(saying, form);
    const tone = toneOf(saying);
    const parts: Part[] = [];
    let endS = 0;
    if (tone !== null) {
      parts.push({ sound: { tone }, offsetS: 0 });
      endS = toneDurationS(tone);
    }
    for (const clips of sentences) {
      let gapS = parts.length === 0 ? 0 : parts.length === 1 && tone !== null ? AFTER_TONE_S : STOP_S;
      for (const clip of clips) {
        const span = clipSpan(pack, clip);
        if (span === null) continue;
        parts.push({ sound: { clip }, offsetS: endS + gapS });
        endS += gapS + span.durationS;
        gapS = JOIN_S;
      }
    }
    return { text: textOf(sentences), parts, durationS: endS };
  },
});
