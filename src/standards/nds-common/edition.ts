/**
 * The National Design Specification for Wood Construction, as far as 2018 and 2024 share it. Every clause here is
 * made by a factory that takes the edition, so that the same equation is cited from the edition it is used under.
 * The 2015 edition is not among them: it has neither head pull-through nor the ring-shank equation.
 */
export interface NdsEdition {
  /** Folder of the edition and first part of its clause ids. */
  readonly id: string;
  /** As cited in proofs. */
  readonly name: string;
}

/** "NDS 2018 12.2.2": document, edition and clause as cited. */
export const citation = (edition: NdsEdition, clause: string): string => `${edition.name} ${clause}`;
