/** A part as it is described so far: three dimensioned views and the body, drawn anew as figures change. */
import { type ReactNode, useMemo } from 'react';
import { boundsOfBoxes, drivenPart, modelOf, type PartSpec, viewsOf } from '../../../geometry';
import { dimensionTexts } from './dimension-texts';
import { ProjectionSign } from './projection-sign';
import { layOutSheet, type PlacedView } from './sheet-layout';
import { SolidBody } from './solid-body';
import { ThreeViews } from './three-views';
import { useWidth } from './use-width';
import './part-drawing.css';

interface PartDrawingProps {
  readonly spec: PartSpec;
  /** Fields whose dimensions are drawn at all times. */
  readonly shown: readonly string[];
  /** Path of the field that has the focus; its dimension is drawn too. */
  readonly activePath: string | undefined;
  /** The form holds figures that cannot be drawn: this is the last good state. */
  readonly isStale: boolean;
  readonly onPick: (path: string) => void;
  readonly overlay?: ((view: PlacedView) => ReactNode) | undefined;
}

const NARROWEST = 280;
/** A drawing taller than this share of its width pushes the form away. */
const TALLEST_SHARE = 0.98;
/** A corner smaller than this is no place for a picture, pixels. */
const LEAST_CORNER = 120;
const BODY_HEIGHT = 130;

export function PartDrawing({ spec, shown, activePath, isStale, onPick, overlay }: PartDrawingProps) {
  const [host, measured] = useWidth();
  const width = Math.max(measured, NARROWEST);
  const model = modelOf(spec);
  const views = useMemo(() => viewsOf(spec), [spec]);
  const texts = useMemo(() => dimensionTexts(spec, shown, activePath), [spec, shown, activePath]);
  const layout = useMemo(() => {
    const whole = boundsOfBoxes(model.boxes.map(({ box }) => box));
    return whole && layOutSheet(views, whole, texts, width, width * TALLEST_SHARE);
  }, [views, model, texts, width]);
  const moving = useMemo(
    () => new Set(activePath === undefined ? [] : (drivenPart(spec, activePath)?.moves ?? [])),
    [spec, activePath],
  );
  if (!layout) return null;
  const { corner } = layout;
  const inCorner = Math.min(corner.width, corner.height) >= LEAST_CORNER;
  const body = inCorner ? { width: corner.width, height: corner.height } : { width, height: BODY_HEIGHT };
  return (
    <figure className="part-drawing" ref={host} data-stale={isStale}>
      <div className="drawing-paper">
        {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be a drawing. */}
        <svg
          width={width}
          height={layout.height}
          viewBox={`0 0 ${width} ${layout.height}`}
          role="group"
          aria-label="Three views with dimensions in millimetres"
        >
          <ThreeViews
            model={model}
            layout={layout}
            activePath={activePath}
            moving={moving}
            onPick={onPick}
            overlay={overlay}
          />
        </svg>
        <div
          className="body-place"
          style={inCorner ? { position: 'absolute', left: corner.left, top: corner.top } : {}}
        >
          <SolidBody model={model} front={views[0]} width={body.width} height={body.height} />
        </div>
      </div>
      <figcaption className="quiet">
        <ProjectionSign />
        <span>
          {isStale ? 'The figures as they stand cannot be drawn: this is the last state that could. ' : ''}
          {`First-angle projection, mm${spec.kind === 'enclosure' ? ', side panel and top taken off' : ''}; values in brackets are defaults.`}
        </span>
      </figcaption>
    </figure>
  );
}
