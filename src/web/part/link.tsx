import type { AnchorHTMLAttributes, MouseEvent } from 'react';
import { go } from '../state/route.ts';

/** A link inside the page: no reload, but a real address, so that it can be opened in another tab. */
export function Link({ to, ...rest }: { to: string } & AnchorHTMLAttributes<HTMLAnchorElement>) {
  const follow = (event: MouseEvent<HTMLAnchorElement>): void => {
    rest.onClick?.(event);
    if (event.defaultPrevented || event.metaKey || event.ctrlKey || event.shiftKey || event.button !== 0) return;
    event.preventDefault();
    go(to);
  };
  return <a {...rest} href={to} onClick={follow} />;
}
