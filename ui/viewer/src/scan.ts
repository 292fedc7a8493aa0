// Reading a square through the camera, where the browser itself can; elsewhere the phone's own camera app does.

/** What the Barcode Detection API has of use here; the types of the DOM do not know it. */
interface Detector {
  detect(source: HTMLVideoElement): Promise<ReadonlyArray<{ readonly rawValue: string }>>;
}

interface DetectorClass {
  new (options: { formats: string[] }): Detector;
  getSupportedFormats(): Promise<string[]>;
}

const PAUSE_MS = 200;

/** Whether this browser can look for squares; one whose service for it is missing cannot. */
export async function canScan(): Promise<boolean> {
  const formats = await detectorClass()?.getSupportedFormats().catch((): string[] => []);
  return formats?.includes('qr_code') === true && 'mediaDevices' in navigator;
}

/** The text of the first square that the camera sees; the empty text when the video is taken off the page before. */
export async function scan(video: HTMLVideoElement): Promise<string> {
  const stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
  try {
    video.srcObject = stream;
    await video.play();
    const detector = new (detectorClass() as DetectorClass)({ formats: ['qr_code'] });
    while (video.isConnected) {
      const [square] = await detector.detect(video);
      if (square !== undefined) return square.rawValue;
      await new Promise((later) => setTimeout(later, PAUSE_MS));
    }
    return '';
  } finally {
    stream.getTracks().forEach((track) => track.stop());
  }
}

function detectorClass(): DetectorClass | undefined {
  return (globalThis as { BarcodeDetector?: DetectorClass }).BarcodeDetector;
}
