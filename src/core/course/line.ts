/** The line on the ground, measured on the ellipsoid and scaled so that its length is the official distance. */
export interface CourseLine {
  readonly officialM: number;
  /** What the recording of the line measures by itself. */
  readonly recordedM: number;
  /** Vertices in metres east and north of the origin. */
  readonly eastM: Float64Array;
  readonly northM: Float64Array;
  /** Official metres along the line at each vertex; from 0 to officialM. */
  readonly alongM: Float64Array;
  /** Height at each vertex, metres; null where the recording has none. */
  readonly elevationM: Float64Array | null;
  readonly originLatitudeDeg: number;
  readonly originLongitudeDeg: number;
}
