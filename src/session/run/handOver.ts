/** Something that is handed over once and then held no longer: what was taken up from a log of hours is needed for a moment. */
export const handOver = <T>(thing: T): (() => T | null) => {
  let held: T | null = thing;
  return () => {
    const given = held;
    held = null;
    return given;
  };
};
