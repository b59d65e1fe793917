/** The plan's promise. Total on [0, distanceM]; strictly increasing; T(distanceM) as the plan's formula gives it. */
export interface Schedule {
  readonly distanceM: number;
  /** Own-clock seconds at which the plan passes a distance. */
  readonly timeAtS: (distanceM: number) => number;
  /** The inverse: where the plan is at a time. Clamped to the course. */
  readonly distanceAtM: (timeS: number) => number;
  /** Planned pace at a distance, seconds per kilometre. */
  readonly paceAtSPerKm: (distanceM: number) => number;
}
