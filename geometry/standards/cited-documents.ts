/** The documents the tables cite, each once, so that a citation never drifts from table to table. */
import { type CitedDocument, citing, type Published, type Remarks } from './published';

export const atxSpecification = {
  document: 'ATX Specification',
  publisher: 'Intel',
  revision: '2.2',
} satisfies CitedDocument;

export const microAtxSpecification = {
  document: 'microATX Motherboard Interface Specification',
  publisher: 'Intel',
  revision: '1.2',
} satisfies CitedDocument;

export const miniItxAddendum = {
  document: 'Mini-ITX Addendum to the microATX Motherboard Interface Specification',
  publisher: 'Intel',
  revision: '1.1 (April 2009)',
} satisfies CitedDocument;

export const flexAtxAddendum = {
  document: 'FlexATX Addendum to the microATX Specification',
  publisher: 'Intel',
  revision: '1.0',
} satisfies CitedDocument;

export const dtxSpecification = {
  document: 'DTX Mechanical Interface Specification, publication 42197',
  publisher: 'AMD',
  revision: '1.00 (February 2007)',
} satisfies CitedDocument;

export const ssiElectronicsBay = {
  document: 'Enterprise Electronics Bay Specification 2011',
  publisher: 'Server System Infrastructure Forum',
  revision: '1.0.1',
} satisfies CitedDocument;

export const thinMiniItxGuide = {
  document: 'Thin Mini-ITX Based PC System Design Guide',
  publisher: 'Intel',
} satisfies CitedDocument;

export const cardElectromechanical = {
  document: 'PCI Express Card Electromechanical Specification',
  publisher: 'PCI-SIG',
  revision: '3.0 (21 July 2013)',
} satisfies CitedDocument;

export const supplyGuide2004 = {
  document: 'ATX12V Power Supply Design Guide',
  publisher: 'Intel',
  revision: '2.0',
} satisfies CitedDocument;

export const supplyGuide1998 = {
  document: 'ATX Power Supply Design Guide',
  publisher: 'Intel',
  revision: '0.9',
} satisfies CitedDocument;

export const supplyGuideAtx3 = {
  document: 'ATX Version 3 Multi Rail Desktop Platform Power Supply Design Guide, document 336521',
  publisher: 'Intel',
  revision: '2.0 to 2.1a',
} satisfies CitedDocument;

export const supplyGuideSingleRail = {
  document: 'ATX12VO Desktop Power Supply Design Guide, document 613768',
  publisher: 'Intel',
  revision: '2.01',
} satisfies CitedDocument;

export const supplyGuideThin = {
  document: 'TFX12V Power Supply Design Guide',
  publisher: 'Intel',
  revision: '2.0',
} satisfies CitedDocument;

export const drive35Inch = {
  document: 'SFF-8301 Form Factor of 3.5 inch Disk Drives',
  publisher: 'SNIA',
  revision: '3.4',
} satisfies CitedDocument;

export const drive25Inch = {
  document: 'SFF-8201 Form Factor of 2.5 inch Disk Drives',
  publisher: 'SNIA',
  revision: '3.4',
} satisfies CitedDocument;

export const m2Specification = {
  document: 'PCI Express M.2 Specification',
  publisher: 'PCI-SIG',
  revision: '1.0 (November 2013)',
} satisfies CitedDocument;

export const dimmOutlineDdr4 = {
  document: 'MO-309 DDR4 DIMM outline',
  publisher: 'JEDEC',
} satisfies CitedDocument;

export const dimmOutlineSdram = {
  document: 'MO-161 SDRAM DIMM outline',
  publisher: 'JEDEC',
} satisfies CitedDocument;

export const generalTolerances = {
  document: 'ISO 2768-1 General tolerances, part 1: linear and angular dimensions, table 1',
  publisher: 'ISO',
  revision: '1989',
} satisfies CitedDocument;

/** Rows that rest on makers' open drawings, articles or listings, several or one: no standard covers them. */
export const noStandard = {
  document: 'no standard; published drawings and articles',
} satisfies CitedDocument;

/** A value builders work by, written in no document. */
export function commonPractice<T>(value: T, remarks: Remarks = {}): Published<T> {
  return citing({ document: 'common practice, no source' })(value, 'common practice', undefined, remarks);
}

/** A value believed right and found in no document: replace with a drawing before relying on it. */
export function fromMemory<T>(value: T, remarks: Remarks = {}): Published<T> {
  return citing({ document: 'from memory, no source' })(value, 'memory', undefined, remarks);
}
