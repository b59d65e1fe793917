import { t } from '../../languages/text.ts';
import { readCode } from '../../share/picture.ts';
import { PickFile } from '../parts/files.tsx';
import { useCamera } from './camera.ts';
import { pixelsOf } from './pixels.ts';

interface Props {
  readonly onText: (text: string) => void;
  readonly onTrouble: (text: string) => void;
}

const readFile = async (file: File): Promise<string | null> => {
  const bitmap = await createImageBitmap(file);
  const pixels = pixelsOf(bitmap, bitmap.width, bitmap.height);
  bitmap.close();
  return pixels === null ? null : readCode(pixels);
};

/** Reads a picture code by the camera where that is allowed, and from a picture file anywhere. */
export const ReadPicture = ({ onText, onTrouble }: Props) => {
  const { stream, video, look, stop } = useCamera(onText, () =>
    onTrouble(
      t('The camera is not allowed, or there is none. Photograph the code and open the picture instead.'),
    ),
  );
  const open = async (file: File): Promise<void> => {
    try {
      const text = await readFile(file);
      if (text === null)
        onTrouble(
          t(
            'No code was found in this picture. Take it straight on, whole, with its white margin, and sharp.',
          ),
        );
      else onText(text);
    } catch {
      onTrouble(t('This file is no picture that the browser can open.'));
    }
  };

  return (
    <>
      <div class="buttons">
        {stream.value === null ? (
          <button type="button" onClick={() => void look()}>
            {t('Read with the camera')}
          </button>
        ) : (
          <button type="button" onClick={stop}>
            {t('Camera off')}
          </button>
        )}
        <PickFile
          label={t('Open a picture')}
          about={t('Open a picture of a code')}
          accept="image/*"
          onFile={(file) => void open(file)}
        />
      </div>
      {stream.value !== null && (
        <video ref={video} class="camera" muted playsInline aria-label={t('Camera')} />
      )}
    </>
  );
};
