/**
 * A file of public/voice, from the offline store where there is one.
 * @throws Error where it cannot be had
 */
export const voiceFile = async (name: string): Promise<Uint8Array> => {
  const response = await fetch(`/voice/${name}`);
  if (!response.ok) throw new Error(`/voice/${name}: ${response.status}`);
  return new Uint8Array(await response.arrayBuffer());
};
