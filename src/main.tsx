import { computed } from '@preact/signals';
import { render } from 'preact';
import { createAfterwards } from './page/afterwards.ts';
import { createBefore } from './page/before.ts';
import { createGround } from './page/ground.ts';
import { createRehearsing } from './page/rehearsing.ts';
import { createRunning } from './page/running.ts';
import { pageOf } from './page/screens.tsx';
import { createStandBy } from './page/standBy.ts';
import './screens/style/all.ts';
import { watchVisibility } from './sensors/visibility.ts';
import { afterPaint } from './session/phone/afterPaint.ts';
import { keepFace } from './session/phone/keepFace.ts';

const page = document.getElementById('page');
if (page === null) throw new Error('index.html has no #page');

// The file's name holds a hash of what is in it.
const ground = createGround(import.meta.url);
const review = createAfterwards(ground);
// What kept runs say is known once they were read.
afterPaint(() => void review.refresh());
const before = createBefore(ground, review);
const rehearse = createRehearsing(ground, before.plan);
const running = createRunning(ground, review, before.plan);
const standBy = createStandBy(ground, running);

const { run, practice } = running;
watchVisibility((visible) => {
  if (visible) {
    run.seenAgain();
    standBy.offline.look();
  } else run.hidden();
});
keepFace(window, () => run.current.value?.phase.value === 'running');

// A run that was cut off is more urgent than whatever the address says.
void ground.voices.first
  .then(run.recover)
  .then(async (found) => {
    if (found) location.hash = '#/run';
    else if (await practice.recover()) location.hash = '#/practice';
  })
  // A run goes on in the language that it began in; after it the choice is followed again.
  .finally(() =>
    ground.voices.follow(
      computed(() => (run.current.value ?? run.brokenOff.value ?? practice.current.value) !== null),
    ),
  );

render(pageOf({ ground, before, rehearse, running, standBy, review }), page);
