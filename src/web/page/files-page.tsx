import { useRef, useState } from 'react';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { fileOf, packOf, sendFile, type TakenFile, thumbOf } from '../api/casebook.ts';
import { toFileRecord } from '../part/file-record.ts';
import { FileUnderstood } from '../part/file-understood.tsx';
import { type FileUse, FileUseFields, guessUse, isSaid, toExhibit } from '../part/file-use.tsx';
import { addExhibit, listOf } from '../part/new-exhibit.ts';
import { SheetView } from '../part/sheet.tsx';
import { PhotoMarks } from '../photo/photo-marks.tsx';
import { newItemId } from '../state/place-parts.ts';
import { go, toCasePath } from '../state/route.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { SHEETS } from './chapter-sheets.ts';

interface Coming {
  readonly key: string;
  readonly file: File;
  readonly taken: TakenFile | null;
  readonly trouble: string;
  readonly settled: Readonly<Record<string, string>>;
  readonly use: FileUse;
  /** Bytes that have gone, while they go. */
  readonly sent: number | null;
  readonly stop: AbortController;
}

const PICTURE = /^image\//;
const KB = 1024;
const MB = KB * KB;
const NO_USE: FileUse = { kind: '', roles: [] };

/** Files and pictures by drop, paste or choice. What the importer understood and doubts is shown before anything is taken into the case. */
export function FilesPage() {
  const { store } = useOpenPage();
  const { id } = useSnapshot();
  const [coming, setComing] = useState<readonly Coming[]>([]);
  const [over, setOver] = useState(false);
  const choose = useRef<HTMLInputElement>(null);
  const update = (key: string, part: Partial<Coming>): void =>
    setComing((all) => all.map((one) => (one.key === key ? { ...one, ...part } : one)));
  const send = async (key: string, file: File, settled: Readonly<Record<string, string>>, stop: AbortController): Promise<void> => {
    try {
      const watch = { signal: stop.signal, progress: (sent: number) => update(key, { sent }) };
      const taken = await sendFile(id, file, settled, watch);
      const use = taken.understood === undefined ? NO_USE : guessUse(taken.understood);
      update(key, { taken, trouble: '', settled, use, sent: null });
    } catch (error) {
      update(key, { sent: null, trouble: error instanceof Error ? error.message : String(error) });
    }
  };
  const bring = (files: Iterable<File>): void => {
    for (const file of files) {
      const key = newItemId('file');
      const stop = new AbortController();
      setComing((all) => [...all, { key, file, taken: null, trouble: '', settled: {}, use: NO_USE, sent: 0, stop }]);
      void send(key, file, {}, stop);
    }
  };
  const drop = (key: string): void => setComing((all) => all.filter((one) => one.key !== key));
  const take = ({ key, file, taken, settled, use }: Coming): void => {
    if (taken === null) return;
    const ids = listOf(store, 'files').map((item) => String(item['id']));
    const { id: made, change } = toFileRecord(taken, ids, settled);
    const first = [change];
    const name = file.name.replace(/\.[^.]*$/, '');
    if (PICTURE.test(taken.media) && use.kind !== 'thermalPicture') addExhibit(store, 'photo', { file: made, of: name }, first);
    else if (use.kind !== '' && taken.understood !== undefined) {
      const exhibit = addExhibit(store, use.kind, toExhibit(use, taken.understood, made), first);
      store.setScreen(`open-${use.kind}`, exhibit);
      go(toCasePath(id, use.kind === 'sweep' ? 'load' : 'heat'));
    } else store.change(first, newItemId('file'), { key: 'addFile', args: { name: file.name } });
    drop(key);
  };
  const files = listOf(store, 'files');
  return (
    <article className="chapter" aria-labelledby="chapter-title">
      <header>
        <h2 id="chapter-title">{CASE_PAGE.photosAndFiles}</h2>
        <span className="small">{CASE_PAGE.instrumentExportsAndPicturesTheir}</span>
        <a className="btn" href={packOf(id)} download>
          {CASE_PAGE.packThisCase}
        </a>
      </header>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: dropping has a button beside it that does the same */}
      <div
        className={`drop${over ? ' over' : ''}`}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault();
          setOver(false);
          bring(event.dataTransfer.files);
        }}
        onPaste={(event) => bring(event.clipboardData.files)}
      >
        <p>{CASE_PAGE.dropOrPasteFilesHere}</p>
        <button type="button" className="btn" onClick={() => choose.current?.click()}>
          {CASE_PAGE.chooseFiles}
        </button>
        <input
          ref={choose}
          type="file"
          multiple
          className="for-ears"
          tabIndex={-1}
          aria-label={CASE_PAGE.chooseFiles}
          onChange={(event) => {
            bring(event.target.files ?? []);
            event.target.value = '';
          }}
        />
      </div>
      {coming.map((one) => (
        <section key={one.key} className="coming" aria-label={CASE_PAGE.notTakenYet(one.file.name)}>
          <h3>{one.file.name}</h3>
          {one.trouble !== '' ? (
            <p className="trouble" role="alert">
              {one.trouble}
            </p>
          ) : one.taken === null ? (
            <p>
              <progress max={one.file.size} value={one.sent ?? one.file.size} aria-label={CASE_PAGE.sent(one.file.name)} />{' '}
              {one.sent !== null && one.sent < one.file.size
                ? CASE_PAGE.ofMbSent(megabytes(one.sent), megabytes(one.file.size))
                : CASE_PAGE.readingIt}
            </p>
          ) : (
            <>
              <FileUnderstood
                file={one.taken}
                settled={one.settled}
                onSettle={(settled) => void send(one.key, one.file, settled, one.stop)}
              />
              {one.taken.understood !== undefined && (
                <FileUseFields description={one.taken.understood} use={one.use} onUse={(use) => update(one.key, { use })} />
              )}
            </>
          )}
          <p className="ways">
            {one.taken !== null && one.trouble === '' && (
              <button type="button" className="btn" disabled={!isSaid(one.use)} onClick={() => take(one)}>
                {CASE_PAGE.takeItIntoTheCase}
              </button>
            )}
            {one.taken === null && one.trouble === '' ? (
              <button type="button" className="btn" onClick={() => one.stop.abort()}>
                {CASE_PAGE.stop}
              </button>
            ) : (
              <button type="button" className="quiet" onClick={() => drop(one.key)}>
                {CASE_PAGE.leaveIt}
              </button>
            )}
          </p>
        </section>
      ))}
      <ul className="filelist" aria-label={CASE_PAGE.filesOfThisCase}>
        {files.map((file) => (
          <li key={String(file['id'])}>
            {PICTURE.test(String(file['media'])) && <img src={thumbOf(id, String(file['sha256']))} alt="" loading="lazy" />}
            <a href={fileOf(id, String(file['sha256']))} download>
              {String(file['path']).replace(/^files\/[0-9a-f]{12}-/, '')}
            </a>
            <small>
              {Math.ceil(Number(file['bytes']) / KB)} {CASE_PAGE.kb} {String(file['media'])}
            </small>
          </li>
        ))}
      </ul>
      <PhotoMarks />
      {SHEETS.photos.map((sheet) => (
        <SheetView key="photos" sheet={sheet} lit={() => new Set()} />
      ))}
    </article>
  );
}

function megabytes(bytes: number): string {
  return (bytes / MB).toFixed(1);
}
