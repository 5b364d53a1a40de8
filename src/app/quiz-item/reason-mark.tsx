/** Right and wrong by shape; the words stand beside it. */
export function ReasonMark({ right }: { readonly right: boolean }) {
  return (
    <svg
      className="reason-mark"
      data-right={right}
      width="22"
      height="22"
      viewBox="0 0 22 22"
      aria-hidden="true"
      fill="none"
    >
      {right ? (
        <>
          <circle cx="11" cy="11" r="9.5" fill="var(--good)" />
          <path
            d="M6.5 11.5 l3 3 l6 -7"
            stroke="var(--on-good)"
            strokeWidth="2.4"
            strokeLinecap="round"
            strokeLinejoin="round"
          />
        </>
      ) : (
        <>
          <rect x="2" y="2" width="18" height="18" rx="3" stroke="var(--edge)" strokeWidth="2" />
          <path
            d="M7 7 l8 8 M15 7 l-8 8"
            stroke="var(--edge)"
            strokeWidth="2.2"
            strokeLinecap="round"
          />
        </>
      )}
    </svg>
  );
}
