import { writeFileSync } from 'node:fs';

/** A picture in grey, row by row, 0 to 255. */
export type Picture = Uint8Array;

interface Size {
  readonly width: number;
  readonly height: number;
}

const PAPER = 205;
const INK = 50;
const TABLE = 120;

/**
 * A picture code as a camera sees it: on a sheet that lies turned on a table, never quite black nor white.
 * @param turnedDeg  how far the sheet is turned
 * @param share      of the picture's height that the sheet takes
 */
export const filmed = (
  code: readonly (readonly boolean[])[],
  { width, height }: Size,
  turnedDeg: number,
  share: number,
): Picture => {
  const picture = new Uint8Array(width * height);
  const side = share * height;
  const [sin, cos] = [Math.sin((turnedDeg * Math.PI) / 180), Math.cos((turnedDeg * Math.PI) / 180)];
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [dx, dy] = [x - width / 2, y - height / 2];
      const u = Math.floor(((dx * cos + dy * sin) / side + 0.5) * code.length);
      const v = Math.floor(((dy * cos - dx * sin) / side + 0.5) * code.length);
      const dark = code[v]?.[u];
      picture[y * width + x] = dark === undefined ? TABLE : dark ? INK : PAPER;
    }
  return picture;
};

/** Nothing but the table, a little uneven. */
export const bare = ({ width, height }: Size): Picture =>
  Uint8Array.from({ length: width * height }, (_, i) => TABLE + (i % 7));

/** Writes pictures as an uncompressed film (YUV4MPEG2, as mjpegtools wrote it down; memory), ten a second. */
export const writeFilm = (path: string, { width, height }: Size, pictures: readonly Picture[]): void => {
  const grey = Buffer.alloc((width * height) / 2, 128);
  writeFileSync(
    path,
    Buffer.concat([
      Buffer.from(`YUV4MPEG2 W${width} H${height} F10:1 Ip A1:1 C420jpeg\n`),
      ...pictures.flatMap((picture) => [Buffer.from('FRAME\n'), Buffer.from(picture), grey]),
    ]),
  );
};
