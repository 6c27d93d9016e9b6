/** The client view with its drawing, and the way to put both on paper. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { ClientPage } from '../views/client/client-page';
import { Drawing } from './drawing';
import { OpenSheet } from './open-sheet';
import { onLightSheet, takePicture } from './take-picture';
import { useStudy } from './use-study';

interface ClientScreenProps {
  readonly onTakeCopy: () => void;
  readonly onOpenOwn: () => void;
}

export function ClientScreen(props: ClientScreenProps) {
  const [picture, setPicture] = useState<string>();
  const image = useRef<HTMLImageElement>(null);
  useStudy();
  const print = useCallback(async () => {
    await onLightSheet(async () => {
      const taken = await takePicture();
      flushSync(() => setPicture(taken));
      await image.current?.decode().catch(() => undefined);
      window.print();
    });
  }, []);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'p') return;
      event.preventDefault();
      void print();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [print]);
  return (
    <ClientPage {...props} onPrint={() => void print()}>
      <Drawing readOnly />
      {picture !== undefined && <img ref={image} className="print-picture" src={picture} alt="" />}
      <OpenSheet />
    </ClientPage>
  );
}
