import { useEffect, useState } from 'react';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { getAccess, phoneOf } from '../api/casebook.ts';
import { toCapturePath } from '../state/route.ts';
import { Link } from './link.tsx';

/** The way of a phone into this case; nothing where no phone can reach the server. */
export function Phone({ id }: { id: string }) {
  const [phones, setPhones] = useState(false);
  const [open, setOpen] = useState(false);
  useEffect(() => {
    getAccess().then(
      (told) => setPhones(told.phones),
      () => undefined, // the page says elsewhere that the server does not answer
    );
  }, []);
  if (!phones) return null;
  return (
    <div className="phone">
      <button type="button" className="btn" aria-expanded={open} onClick={() => setOpen(!open)}>
        {CASE_PAGE.phone}
      </button>
      {open && (
        <div className="phone-code">
          <img src={phoneOf(id)} width="220" height="220" alt={CASE_PAGE.linkToThisCaseAs} />
          <p>{CASE_PAGE.pointCameraPhoneInSame}</p>
          <Link to={toCapturePath(id)}>{CASE_PAGE.openHereInstead}</Link>
        </div>
      )}
    </div>
  );
}
