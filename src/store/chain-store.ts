/** The dimensions behind the clearance whose card is open, as they lie in the machine; drawn while they are known. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { ChainLink, DimensionChain } from '../../geometry';
import { hoverPart, pointAtFaces } from './view-store';

interface ChainState {
  readonly chain: DimensionChain | undefined;
  /** The dimension a person points at, in the list or by the keyboard. */
  readonly pointed: string | undefined;
}

const chainStore = createStore<ChainState>()(() => ({ chain: undefined, pointed: undefined }));

type Named = Pick<ChainLink, 'part' | 'path'>;

export function keyOfDimension({ part, path }: Named): string {
  return `${part}/${path}`;
}

export function showChain(chain: DimensionChain | undefined): void {
  if (chainStore.getState().chain !== chain) chainStore.setState({ chain });
}

/** Shows the part, and the two faces the dimension lies between, in the drawing; lets go without one. */
export function pointAtDimension(dimension: Named | undefined): void {
  const pointed = dimension && keyOfDimension(dimension);
  const link = chainStore.getState().chain?.links.find((one) => keyOfDimension(one) === pointed);
  chainStore.setState({ pointed });
  hoverPart(dimension?.part);
  pointAtFaces(link?.faces);
}

export function useChain(): ChainState {
  return useStore(chainStore);
}
