import { SaxesParser } from 'saxes';
import { message, written } from '../units/message.ts';
import { type DoorError, err, ok, type Result } from '../units/result.ts';
import { gpxCollector } from './gpxCollector.ts';
import type { Gpx } from './gpxTypes.ts';

/** A 100 km race recorded ten times a second is 40 MB. More is no recording of a run. */
const MAX_GPX_CHARS = 64_000_000;
/** Fed in pieces, so that a file that is no XML is given up early. */
const CHUNK_CHARS = 65_536;
/** A recorder that makes a mistake makes it at every point; beyond this it is another kind of file. */
const MAX_XML_FAULTS = 1000;

/**
 * An ampersand that begins no reference, as recorders write it in names. To an XML parser everything up to the next
 * semicolon would be one odd reference, points and all; so it is written out first.
 */
const BARE_AMPERSAND = /&(?!(?:#\d{1,7}|#x[\da-fA-F]{1,6}|[A-Za-z_][\w.-]{0,30});)/g;

const refuse = (expected: string, found: string): Result<never, DoorError> =>
  err({ place: 'the file', expected, found });

/**
 * GPX 1.1 (and 1.0) text to points. Tolerant: unusable points are skipped and counted, XML faults are stepped over, a file
 * cut short gives what came before. A document type definition is read over and defines nothing: no entity but the five
 * of XML is ever expanded. Never throws.
 */
export const parseGpx = (text: string): Result<Gpx, DoorError> => {
  if (text.length > MAX_GPX_CHARS) return refuse('at most 64 MB of GPX', `${text.length} characters`);
  const start = /[^\s\uFEFF]/.exec(text)?.[0];
  if (start === undefined) return refuse('a GPX file', 'nothing');
  if (start !== '<') return refuse('a GPX file', `text that begins with ${JSON.stringify(start)}`);
  const collector = gpxCollector();
  let xmlFaults = 0;
  let firstFault = '';
  const parser = new SaxesParser({ position: true });
  parser.on('error', (e) => {
    xmlFaults++;
    firstFault ||= e.message.slice(0, 80);
  });
  parser.on('opentag', (tag) => collector.open(tag.name, tag.attributes));
  parser.on('closetag', (tag) => collector.close(tag.name));
  parser.on('text', (t) => collector.text(t));
  // Within CDATA an ampersand is one: what was written out above is taken back.
  parser.on('cdata', (t) => collector.text(t.replaceAll('&amp;', '&')));
  try {
    const xml = text.slice(text.indexOf('<')).replace(BARE_AMPERSAND, '&amp;');
    for (let at = 0; at < xml.length && xmlFaults <= MAX_XML_FAULTS; at += CHUNK_CHARS) {
      parser.write(xml.slice(at, at + CHUNK_CHARS));
    }
    parser.close();
  } catch (e) {
    firstFault ||= e instanceof Error ? e.message.slice(0, 80) : 'damaged XML';
    xmlFaults++;
  }
  const { gpx, isGpx } = collector.result(
    xmlFaults === 0 ? [] : [message('XML faults, the first at {place}', { place: firstFault })],
  );
  const noXml = firstFault === '' ? 'no element' : `text that is no XML: ${firstFault}`;
  if (!isGpx) return refuse('a gpx element at the top', collector.root() ?? noXml);
  const paths = [...gpx.tracks, ...gpx.routes];
  if (paths.length === 0 && gpx.waypoints.length === 0) {
    const [fault] = gpx.faults;
    const first = collector.firstBad();
    return refuse(
      'at least one usable point',
      fault === undefined
        ? 'no track, route or waypoint'
        : `${written(fault)}${first === null ? '' : `, the first with ${first}`}`,
    );
  }
  return ok(gpx);
};
