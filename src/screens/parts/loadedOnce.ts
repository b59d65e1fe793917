/**
 * Loads when it is first asked for, and gives everybody who asks the same. A load that failed is tried again by the next
 * who asks.
 * @param load  may reject; whoever asked is told
 */
export const loadedOnce = <T>(load: () => Promise<T>): (() => Promise<T>) => {
  let loading: Promise<T> | null = null;
  return () => {
    loading ??= load().catch((error: unknown) => {
      loading = null;
      throw error;
    });
    return loading;
  };
};
