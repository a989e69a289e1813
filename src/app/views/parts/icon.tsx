const PATHS = {
  mark: 'M9 3c0 4-4 5.6-4 8 0 3.2 3 4 3 5.6S6.5 19 6.5 21h11c0-2-1.5-2.8-1.5-4.4s3-2.4 3-5.6c0-2.4-4-4-4-8z',
  new: 'M8 3c0 3-3 4-3 6 0 2.400 2 3 2 4.500 0 1.400-1 2-1 4.500h8M8 3h4c0 3 3 4 3 6 0 1-.4 1.700-.8 2.300M18 13.500v7M14.500 17h7',
  bodies:
    'M7 3c0 3-3 4-3 6 0 2.4 2 3 2 4.500 0 1.400-1 2-1 4.500h8c0-2.500-1-3.100-1-4.500 0-1.500 2-2.100 2-4.500 0-2-3-3-3-6zM17 6c.8 1 3 1.600 3 3.200 0 1.800-1.600 2.300-1.600 3.600 0 1.200.9 1.900.9 4.200h-3',
  parts: 'M5 6h2M5 12h2M5 18h2M10.500 6H19M10.500 12H19M10.500 18H19',
  open: 'M3.500 19V6.500h6l2 2.500h9V19zM3.500 19l3-7h17l-3 7',
  save: 'M12 4v11m-4-4 4 4 4-4M4.500 16v3.500h15V16',
  undo: 'M8.500 5 4 9.500 8.500 14M4 9.500h10a5.500 5.500 0 0 1 0 11h-4',
  redo: 'M15.500 5 20 9.500 15.500 14M20 9.500H10a5.500 5.500 0 0 0 0 11h4',
  earlier: 'M4 12a8 8 0 1 0 2.500-5.800M4 4.500v4h4M12 8v4.500l3 2',
  sun: 'M12 8a4 4 0 1 0 0 8 4 4 0 0 0 0-8zM12 2.500v2.500M12 19v2.500M2.500 12H5M19 12h2.500M5.300 5.300 7 7M17 17l1.700 1.700M5.300 18.700 7 17M17 7l1.700-1.700',
  moon: 'M20 14.500A8.500 8.500 0 0 1 9.500 4a8.500 8.500 0 1 0 10.500 10.500z',
  lamp: 'M5 12a7 7 0 0 1 14 0zM12 12v8M8 20.500h8M9.500 14.500v1.500',
  back: 'M15 5l-7 7 7 7',
  next: 'M9 5l7 7-7 7',
  tick: 'M5 12.500l4.500 4.500L19 7.500',
  close: 'M6 6l12 12M18 6 6 18',
  split: 'M12 4v16M8.500 8 4.500 12l4 4M15.500 8l4 4-4 4',
  join: 'M12 4v16M4.500 8l4 4-4 4M19.500 8l-4 4 4 4',
  picture:
    'M4 7.500h4l1.500-2.500h5L16 7.500h4v11.500H4zM12 9.800a3.200 3.200 0 1 0 0 6.400 3.200 3.200 0 0 0 0-6.400z',
  plus: 'M12 5v14M5 12h14',
  minus: 'M5 12h14',
  fit: 'M4 9V4h5M15 4h5v5M20 15v5h-5M9 20H4v-5',
} as const;

export type IconName = keyof typeof PATHS;

/** Line drawings of our own; decoration only, the button carries the name. */
export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg className="icon" viewBox="0 0 24 24" aria-hidden="true">
      <path d={PATHS[name]} />
      {name === 'mark' && <path className="thread-stroke" d="M12 3.500v17" />}
    </svg>
  );
}
