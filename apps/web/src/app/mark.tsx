export function Mark() {
  return (
    <svg viewBox="0 0 28 32" width="28" height="32" aria-hidden="true">
      <path d="M1.5 1.5h25v29h-25z" fill="var(--sheet)" stroke="var(--ink)" strokeWidth="2" />
      <path d="M7 1.5v29" stroke="var(--accent)" strokeWidth="1.5" />
      <path d="M11 8h11M11 13h11M11 18h4" stroke="var(--ink)" strokeWidth="2" />
      <circle cx="19.5" cy="22" r="5" fill="var(--sheet)" stroke="var(--accent)" strokeWidth="2" />
      <path d="M17.3 22l1.7 1.7 2.8-3.4" fill="none" stroke="var(--accent)" strokeWidth="1.8" />
    </svg>
  );
}
