import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { decodeText } from '../../src/log/decodeText.ts';

const text = (bytes: Uint8Array): string => {
  const got = decodeText(bytes);
  return got.ok ? got.value : `refused: ${got.error.found}`;
};
const latin1 = (s: string): Uint8Array => Uint8Array.from(s, (c) => c.charCodeAt(0));
const utf16 = (s: string, littleEndian: boolean): Uint8Array => {
  const view = new DataView(new ArrayBuffer(2 * s.length));
  for (let i = 0; i < s.length; i++) view.setUint16(2 * i, s.charCodeAt(i), littleEndian);
  return new Uint8Array(view.buffer);
};

describe('decodeText', () => {
  it('reads UTF-8, with and without a mark', () => {
    expect(text(new TextEncoder().encode('Düne ☺'))).toBe('Düne ☺');
    expect(text(new TextEncoder().encode('\uFEFFDüne'))).toBe('Düne');
  });

  it('reads what the XML declaration says', () => {
    const xml = '<?xml version="1.0" encoding="ISO-8859-1"?><gpx>Düne</gpx>';
    expect(text(latin1(xml))).toBe(xml);
  });

  it('reads UTF-16 of either order, with a mark or by its first character', () => {
    for (const littleEndian of [true, false]) {
      expect(text(utf16('\uFEFF<a>ü</a>', littleEndian))).toBe('<a>ü</a>');
      expect(text(utf16('<a>ü</a>', littleEndian))).toBe('<a>ü</a>');
      expect(text(utf16('{"name":"Düne"}', littleEndian))).toBe('{"name":"Düne"}');
    }
  });

  it('refuses what is no text by its kind, and reads a log whose end a power cut has zeroed', () => {
    expect(text(gzipSync('{"a":1}'))).toBe('refused: a packed file (gzip)');
    expect(text(latin1('PK\u0003\u0004 whatever'))).toBe('refused: a packed file (zip)');
    expect(text(latin1('\u000e\u0010\u00ff\u00d9\0\0\0\u00e9'))).toBe('refused: bytes that are no text');
    const zeroed = `{"timestamp": 1, "event": "start"}\n{"timestamp": 2, "event": "ask"}\n${'\0'.repeat(500)}`;
    expect(text(latin1(zeroed))).toBe(zeroed);
  });

  it('reads bytes that are not what they claim letter by letter', () => {
    expect(text(latin1('<?xml version="1.0" encoding="UTF-8"?><gpx>Düne</gpx>'))).toContain('Düne');
    expect(text(latin1('<?xml version="1.0" encoding="klingon"?><gpx>Düne</gpx>'))).toContain('Düne');
  });
});
