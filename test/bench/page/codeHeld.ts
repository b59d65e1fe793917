import type { CDPSession } from 'playwright-core';

interface Snapshot {
  readonly snapshot: {
    readonly meta: {
      readonly node_fields: readonly string[];
      readonly node_types: readonly [readonly string[], ...unknown[]];
    };
  };
  /** One row of `node_fields` after the other. */
  readonly nodes: readonly number[];
}

/** Bytes of a page's heap that the browser made of its script: bytecode, what it compiled, and what that goes by. */
export const codeBytes = async (cdp: CDPSession): Promise<number> => {
  let text = '';
  const take = ({ chunk }: { readonly chunk: string }): void => {
    text += chunk;
  };
  cdp.on('HeapProfiler.addHeapSnapshotChunk', take);
  await cdp.send('HeapProfiler.takeHeapSnapshot', { reportProgress: false });
  cdp.off('HeapProfiler.addHeapSnapshotChunk', take);
  const { snapshot, nodes } = JSON.parse(text) as Snapshot;
  const { node_fields: fields, node_types: types } = snapshot.meta;
  const code = types[0].indexOf('code');
  const [type, size] = [fields.indexOf('type'), fields.indexOf('self_size')];
  let bytes = 0;
  for (let at = 0; at < nodes.length; at += fields.length)
    if (nodes[at + type] === code) bytes += nodes[at + size] ?? 0;
  return bytes;
};
