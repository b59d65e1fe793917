import { createReviewStore } from '../log/reviewStore.ts';
import { createReviewModel } from '../session/review/reviewModel.ts';
import { createRunShelf } from '../session/review/reviewRuns.ts';
import { pageTime } from '../voice/device/pageTime.ts';
import type { Ground } from './ground.ts';

/** The runs that are kept, and what they say. */
export const createAfterwards = ({ store, build, keep, spokenIn, voice, voices, speaker }: Ground) =>
  createReviewModel({
    shelf: createRunShelf({ store, reviews: createReviewStore(), build, keep, language: spokenIn }),
    voice,
    voiceOfRun: voices.ofRun,
    ear: speaker,
    wake: speaker.wake,
    time: pageTime,
    keep,
    wallMs: Date.now,
  });

export type Afterwards = ReturnType<typeof createAfterwards>;
