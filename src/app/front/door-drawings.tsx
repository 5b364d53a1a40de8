/** Line drawings for the doors: a blade in its duct, lanes of a start chart, a list being met. */
export function BladeDrawing() {
  return (
    <svg viewBox="0 0 280 112" fill="none" aria-hidden="true">
      <path d="M8 26 H272 M8 86 H272" stroke="currentColor" strokeWidth="2" />
      <g stroke="currentColor" strokeWidth="2" strokeLinecap="round" opacity="0.75">
        <path d="M26 44 l10 12 l-10 12 M52 44 l10 12 l-10 12 M78 44 l10 12 l-10 12" />
        <path d="M198 44 l10 12 l-10 12 M224 44 l10 12 l-10 12 M250 44 l10 12 l-10 12" />
      </g>
      <circle cx="140" cy="56" r="30" stroke="currentColor" strokeWidth="2" />
      <path d="M120 70 L160 42" stroke="var(--ink)" strokeWidth="6" strokeLinecap="round" />
      <circle cx="140" cy="56" r="4" fill="var(--ink)" />
      <path d="M140 26 V14 M126 2 h28 v14 h-28 z" stroke="currentColor" strokeWidth="2" />
    </svg>
  );
}

export function ChartDrawing() {
  return (
    <svg viewBox="0 0 280 112" fill="none" aria-hidden="true">
      <path
        d="M8 34 H272 M8 62 H272 M8 90 H272"
        stroke="var(--line)"
        strokeWidth="2"
        strokeDasharray="2 5"
      />
      <path d="M60 34 L120 14 H200 L224 26 H272 V34 Z" fill="var(--faint)" />
      <path d="M8 33 H60 L128 14 H168" stroke="var(--ink)" strokeWidth="3" />
      <rect x="104" y="50" width="64" height="10" rx="2" fill="currentColor" />
      <rect x="34" y="78" width="26" height="10" rx="2" fill="currentColor" />
      <path d="M168 4 V106" stroke="var(--ink)" strokeWidth="2" />
      <path d="M161 0 h14 l-7 9 z" fill="var(--ink)" />
    </svg>
  );
}

export function TickDrawing() {
  return (
    <svg viewBox="0 0 280 112" fill="none" aria-hidden="true">
      <g stroke="currentColor" strokeWidth="2">
        <circle cx="40" cy="24" r="11" />
        <circle cx="40" cy="56" r="11" strokeDasharray="4 4" />
        <circle cx="40" cy="88" r="11" strokeDasharray="4 4" />
        <path d="M34 24 l5 5 l8 -10" strokeLinecap="round" />
      </g>
      <g stroke="var(--line)" strokeWidth="6" strokeLinecap="round">
        <path d="M68 24 H214 M68 56 H246 M68 88 H182" />
      </g>
    </svg>
  );
}
