/** The drawing beside a form, and the form's own undo. */
import { type ReactNode, useMemo } from 'react';
import { lengthPaths, type PartSpec } from '../../../geometry';
import { PartDrawing } from '../part-drawing/part-drawing';
import type { PlacedView } from '../part-drawing/sheet-layout';
import { goToField } from './go-to-field';
import { isAlwaysDrawn } from './sheet-order';
import type { DraftSteps } from './use-draft';

interface FormDrawingProps {
  readonly spec: PartSpec | undefined;
  readonly isStale: boolean;
  readonly activePath: string | undefined;
  readonly steps: DraftSteps;
  readonly overlay?: ((view: PlacedView) => ReactNode) | undefined;
}

export function FormDrawing({ spec, isStale, activePath, steps, overlay }: FormDrawingProps) {
  const shown = useMemo(
    () => (spec ? lengthPaths(spec).filter((path) => isAlwaysDrawn(spec.kind, path)) : []),
    [spec],
  );
  return (
    <div className="form-drawing">
      {spec ? (
        <PartDrawing
          spec={spec}
          shown={shown}
          activePath={activePath}
          isStale={isStale}
          onPick={goToField}
          overlay={overlay}
        />
      ) : (
        <p className="quiet">The drawing begins as soon as the first sizes are there.</p>
      )}
      <div className="buttons form-steps">
        <button type="button" className="button small" disabled={!steps.canUndo} onClick={steps.undo}>
          Undo in the form
        </button>
        <button type="button" className="button small" disabled={!steps.canRedo} onClick={steps.redo}>
          Redo
        </button>
      </div>
    </div>
  );
}
