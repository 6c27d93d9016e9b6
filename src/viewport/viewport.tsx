import { lazy, Suspense, useEffect, useRef, useState } from 'react';
import { useAir } from '../store/air-store';
import { useSolutionStore, useViewStore } from '../store/use-store';
import type { Insets } from './camera/fit-sight';
import { type DrawingRoot, openDrawing } from './drawing-root';
import { NoteMarks } from './overlay/note-marks';
import './viewport.css';

const AirNotes = lazy(() => import('./air/air-notes').then((module) => ({ default: module.AirNotes })));
const ChainMarks = lazy(() =>
  import('./overlay/chain-marks').then((module) => ({ default: module.ChainMarks })),
);

export interface ViewportProps {
  /** Parts can be looked at and selected, not moved. */
  readonly readOnly?: boolean;
  /** What tool bars over the drawing cover, CSS pixels; the machine and its labels keep clear of it. */
  readonly insets?: Insets;
}

type Blank = 'missing' | 'lost' | undefined;

const reasons: Readonly<Record<'missing' | 'lost', string>> = {
  missing: 'This browser does not offer WebGL 2, which the drawing needs, so the view is blank.',
  lost: 'The browser took the graphics card away from the drawing, so the view is blank. It comes back by itself when the browser gives it back.',
};

/** The drawing of the plan. Fills its parent and reads the stores; one canvas for as long as it is mounted. */
export function Viewport({ readOnly = false, insets }: ViewportProps) {
  const host = useRef<HTMLDivElement>(null);
  const [drawing, setDrawing] = useState<DrawingRoot>();
  const [blank, setBlank] = useState<Blank>();
  const airShown = useAir((state) => state.shown);
  const clearance = useViewStore((state) => state.selectedClearance);
  const headline = useSolutionStore((state) => state.solution.verdict.headline);

  useEffect(() => {
    if (!host.current) return;
    let opened: DrawingRoot;
    try {
      opened = openDrawing(host.current, {
        readOnly,
        contextLost: () => setBlank('lost'),
        contextRestored: () => setBlank(undefined),
      });
    } catch {
      setBlank('missing');
      return;
    }
    setDrawing(opened);
    return () => {
      setDrawing(undefined);
      opened.dispose();
    };
  }, [readOnly]);

  useEffect(() => {
    drawing?.session.canvas.setAttribute('aria-label', `Drawing of the plan. ${headline}`);
  }, [drawing, headline]);

  useEffect(() => {
    if (!drawing || !insets) return;
    drawing.session.setScreen(drawing.session.screen, insets);
  }, [drawing, insets]);

  return (
    <div className="viewport">
      <div ref={host} className="viewport-host" />
      {drawing && !blank && <NoteMarks session={drawing.session} />}
      {drawing && !blank && airShown && (
        <Suspense>
          <AirNotes session={drawing.session} />
        </Suspense>
      )}
      {drawing && !blank && clearance !== undefined && (
        <Suspense>
          <ChainMarks session={drawing.session} clearance={clearance} />
        </Suspense>
      )}
      {blank && (
        <div className="viewport-blank" role="status">
          <p>{reasons[blank]}</p>
          <p>The tables and the tree still work, with every number and finding.</p>
        </div>
      )}
    </div>
  );
}
