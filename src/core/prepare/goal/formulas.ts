import { type Message, message } from '../../units/message.ts';
import { M_PER_MILE } from '../../units/units.ts';
import { read, type Source } from '../source.ts';
import { danielsGilbertS } from './danielsGilbert.ts';

/** Riegel 1977, 1981: time grows with this power of distance. Fitted on efforts of 3.5 to 230 minutes. */
export const RIEGEL_EXPONENT = 1.06;
export const RIEGEL_FITTED_S = { shortest: 210, longest: 13_800 };

/** T2 = T1 (D2 / D1)^1.06. Metres and seconds. Source: Riegel 1977, 1981. */
export const riegelS = (fromM: number, fromS: number, toM: number): number =>
  fromS * (toM / fromM) ** RIEGEL_EXPONENT;

/** f(d) = 13.49681 - 0.048865 d + 2.438936 d^-0.7905 with d in miles. Source: Cameron 1998. */
const cameronF = (distanceM: number): number => {
  const d = distanceM / M_PER_MILE;
  return 13.49681 - 0.048865 * d + 2.438936 / d ** 0.7905;
};

/** T2 = (T1 / D1) D2 f(D1) / f(D2). Metres and seconds; made for 800 m to about the marathon. Source: Cameron 1998. */
export const cameronS = (fromM: number, fromS: number, toM: number): number =>
  ((fromS / fromM) * toM * cameronF(fromM)) / cameronF(toM);

export const FORMULAS = ['riegel', 'cameron', 'danielsGilbert'] as const;
export type FormulaName = (typeof FORMULAS)[number];

interface Formula {
  readonly timeS: (fromM: number, fromS: number, toM: number) => number;
  readonly label: Message;
  readonly source: Source;
}

/** The three formulas, with the name to show and the source to show beneath. */
export const formulas: Readonly<Record<FormulaName, Formula>> = {
  riegel: {
    timeS: riegelS,
    label: message('Riegel'),
    source: read(message('Riegel 1977, 1981: exponent 1.06, from efforts of 3.5 to 230 minutes')),
  },
  cameron: {
    timeS: cameronS,
    label: message('Cameron'),
    source: read(message('Cameron 1998, fitted to record times')),
  },
  danielsGilbert: {
    timeS: danielsGilbertS,
    label: message('Daniels and Gilbert'),
    source: read(
      message(
        'Daniels and Gilbert 1979: oxygen cost of a speed, and the share of the maximum that a duration allows',
      ),
    ),
  },
};
