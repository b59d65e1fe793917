import { parseGpx } from '../../src/core/course/gpx.ts';
import { lineOfGpx } from '../../src/core/course/gpxCourse.ts';
import { thinned } from '../../src/core/course/gpxThin.ts';
import {
  USUAL_RUNS,
  USUAL_STATION_S,
  USUAL_WANDER_SD,
  whatIf,
} from '../../src/core/prepare/whatIf/whatIf.ts';
import { demoPlan } from '../../src/demo/race.ts';
import { cpuSeconds } from './cpu.ts';
import { fixed, printTable } from './table.ts';

const POINTS = 200_000;
const LAP_M = 100_000;

/** A lap of about 100 km with a point every half metre, heights and times. */
const bigGpx = (): string => {
  const points = Array.from({ length: POINTS }, (_, i) => {
    const a = (i / POINTS) * 2 * Math.PI;
    const lat = (54.1 + 0.14 * Math.sin(a)).toFixed(7);
    const lon = (7.3 + 0.24 * Math.cos(a)).toFixed(7);
    const ele = (20 + 10 * Math.sin(5 * a)).toFixed(1);
    return `<trkpt lat="${lat}" lon="${lon}"><ele>${ele}</ele><time>2027-05-09T08:30:00Z</time></trkpt>`;
  });
  return `<?xml version="1.0"?><gpx version="1.1" creator="bench" xmlns="http://www.topografix.com/GPX/1/1"><trk><trkseg>\n${points.join('\n')}\n</trkseg></trk></gpx>`;
};

/** The least that anybody must do with a text: look at each of its letters once. */
const scan = (text: string): number => {
  let tags = 0;
  for (let i = 0; i < text.length; i++) if (text.charCodeAt(i) === 60) tags++;
  return tags;
};

/** What it costs to read a course file, as a ratio to a plain scan of the same letters; and to ask what if. */
export const printPrepare = (): void => {
  const text = bigGpx();
  const scanS = cpuSeconds(() => scan(text));
  const parseS = cpuSeconds(() => parseGpx(text));
  const got = parseGpx(text);
  if (!got.ok) throw new Error(got.error.found);
  const lineS = cpuSeconds(() => lineOfGpx(got.value, LAP_M));
  const line = lineOfGpx(got.value, LAP_M);
  if (!line.ok) throw new Error(line.error.found);
  const thinS = cpuSeconds(() => thinned(line.value.points));
  const row = (name: string, s: number): string[] => [name, fixed(s, 2), fixed(s / scanS, 0)];
  printTable(
    `A course file of ${POINTS} points, ${fixed(text.length / 1e6, 0)} MB`,
    ['step', 'processor seconds here', 'times a plain scan of its letters'],
    [
      row('a plain scan', scanS),
      row('to points', parseS),
      row('to the measured line', lineS),
      row('thinned to keep', thinS),
    ],
  );
  const spread = { middleS: 6200, sdLog: 0.05, wanderSd: USUAL_WANDER_SD, stationS: USUAL_STATION_S };
  const whatIfS = cpuSeconds(() => {
    whatIf({ plan: demoPlan, course: null, spread, lineAfterGunS: 0, seed: 1, runs: USUAL_RUNS });
  });
  printTable(
    'What if',
    ['', 'processor seconds here'],
    [[`${USUAL_RUNS} runs of the plan and of each opening that it is held against`, fixed(whatIfS, 2)]],
  );
};
