import type { ReactNode } from 'react';
import type { Skill } from '../../../machines/job/index.ts';

/** A line drawing for each skill, by what its part of the plant looks like. */
const DRAWINGS: Readonly<Record<Skill, ReactNode>> = {
  /** Lanes of a start chart, one step after the other. */
  sequence: <path d="M4 8h9v6h10v-6M4 20h15v6h9M13 4v24" />,
  /** A valve in a pipe, its stem up. */
  fuel: <path d="M2 21h6M24 21h6M8 15v12l16-12v12zM16 21v-11M11 10h10" />,
  /** A blade in a duct. */
  air: <path d="M2 7h28M2 25h28M9 23l14-14M16 16h.01M3 16h4M25 16h4" />,
  /** Two electrodes and what jumps between them. */
  ignition: <path d="M3 26l9-9M29 26l-9-9M12 17l3-5 1 5 4-6M16 3v3M8 6l2 3M24 6l-2 3" />,
  /** An eye that looks down a tube. */
  sensing: (
    <>
      <path d="M3 16c6-9 20-9 26 0-6 9-20 9-26 0z" />
      <circle cx="16" cy="16" r="4" />
    </>
  ),
  /** A needle against its mark. */
  limits: <path d="M5 25a13 13 0 1 1 22 0M16 19l7-8M24 6l-2 3M16 19h.01" />,
  /** Two terminals, a contact between them. */
  wiring: (
    <>
      <path d="M2 22h6M24 22h6M10 20l12-9" />
      <circle cx="10" cy="22" r="2" />
      <circle cx="22" cy="22" r="2" />
    </>
  ),
  /** A flame. */
  combustion: (
    <path d="M16 3c1 6 8 9 8 16a8 8 0 0 1-16 0c0-4 3-5 4-9 2 2 3 3 3 5 1-3 2-7 1-12zM16 27c-3-2-3-5 0-8 3 3 3 6 0 8z" />
  ),
  /** A lock that is shut. */
  conduct: <path d="M6 14h20v14h-20zM10 14v-4a6 6 0 0 1 12 0v4M16 19v4" />,
};

export function SkillDrawing({ skill }: { readonly skill: Skill }) {
  return (
    <svg
      className="skill-drawing"
      viewBox="0 0 32 32"
      fill="none"
      stroke="currentColor"
      strokeWidth="2"
      strokeLinecap="round"
      strokeLinejoin="round"
      aria-hidden="true"
    >
      {DRAWINGS[skill]}
    </svg>
  );
}
