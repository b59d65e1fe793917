import type { Pace } from '../../../core/cues/saying.ts';
import type { DistanceUnit } from '../../../core/units/units.ts';
import { timeClips } from './times.ts';

export const perUnit = (unit: DistanceUnit): string => (unit === 'km' ? 'per K' : 'per mile');

/** 'four' 'fifty-six' 'per K'. */
export const paceClips = (pace: Pace): readonly string[] => [...timeClips(pace.sPerUnit), perUnit(pace.unit)];
