/** The dimensions behind the selected clearance, drawn from face to face; loaded with the first card that is opened. */
import { useEffect, useLayoutEffect, useRef } from 'react';
import type { DimensionChain } from '../../../geometry';
import { keyOfDimension, useChain } from '../../store/chain-store';
import { usePlanStore } from '../../store/use-store';
import type { ViewportSession } from '../viewport-session';
import { layOutChain } from './chain-layout';
import type { Rectangle } from './place-labels';
import './chain-marks.css';

export function ChainMarks({
  session,
  clearance,
}: {
  readonly session: ViewportSession;
  readonly clearance: string;
}) {
  const { chain, pointed } = useChain();
  const dragging = usePlanStore((state) => state.preview !== undefined);
  if (!chain || chain.clearance !== clearance || dragging) return null;
  return <DrawnChain session={session} chain={chain} pointed={pointed} />;
}

interface DrawnChainProps {
  readonly session: ViewportSession;
  readonly chain: DimensionChain;
  readonly pointed: string | undefined;
}

function DrawnChain({ session, chain, pointed }: DrawnChainProps) {
  const drawing = useRef<SVGSVGElement>(null);
  useLayoutEffect(() => layOut(session, chain, drawing.current), [session, chain]);
  useEffect(() => session.onFrame(() => layOut(session, chain, drawing.current)), [session, chain]);
  return (
    <svg ref={drawing} className="viewport-chain" aria-hidden="true">
      <title>Dimensions behind the clearance</title>
      {chain.links.map((link) => {
        const key = keyOfDimension(link);
        return (
          <g key={key} data-pointed={key === pointed}>
            <path className="chain-line" />
            <path className="chain-arrow" />
            <text textAnchor="middle" dominantBaseline="central">
              {Math.abs(link.nominal).toFixed(1)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

function layOut(session: ViewportSession, chain: DimensionChain, drawing: SVGSVGElement | null): void {
  if (!drawing) return;
  const { sight, screen, insets } = session;
  const room: Rectangle = {
    left: insets.left,
    top: insets.top,
    width: screen.width - insets.left - insets.right,
    height: screen.height - insets.top - insets.bottom,
  };
  const groups = [...drawing.querySelectorAll('g')];
  const widths = groups.map((group) => group.querySelector('text')?.getComputedTextLength() ?? 0);
  const drawn = layOutChain(sight, screen, chain, widths, room);
  drawing.toggleAttribute('hidden', !drawn);
  groups.forEach((group, index) => {
    const link = drawn?.[index];
    if (!link) return;
    const [line, arrow, text] = group.children;
    line?.setAttribute('d', link.lines);
    arrow?.setAttribute('d', link.arrows);
    text?.setAttribute('x', link.figure[0].toFixed(1));
    text?.setAttribute('y', link.figure[1].toFixed(1));
  });
}
