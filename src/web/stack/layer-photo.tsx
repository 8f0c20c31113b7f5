import { useRef, useState } from 'react';
import type { Change } from '../../app/casebook/change.ts';
import { photoOf, pictureOf, STACK_KEYS, STACK_WORDS } from '../../present/words/stack-words.ts';
import { sendFile, thumbOf } from '../api/casebook.ts';
import { keepPhoto, localTimeOf } from '../capture/quick-reading.ts';
import { listOf } from '../part/new-exhibit.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { placeOfLayer, type Tree } from './layer-edit.ts';
import { layerForm } from './layer-form.ts';
import { MemberField } from './member-field.tsx';

interface Props {
  readonly stack: string;
  readonly layer: Tree;
  readonly name: string;
  readonly onPart: (changes: readonly Change[], name: string) => void;
}

/** A photo of the layer as it lies open: taken or chosen here, or one that the case has already. */
export function LayerPhoto({ stack, layer, name, onPart }: Props) {
  const { store, form } = useOpenPage();
  const { id } = useSnapshot();
  const choose = useRef<HTMLInputElement>(null);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState('');
  const place = placeOfLayer(stack, String(layer['id']));
  const bring = async (file: File): Promise<void> => {
    setBusy(true);
    setTrouble('');
    try {
      const taken = await sendFile(id, file, {}, {});
      if (!taken.media.startsWith('image/')) setTrouble(STACK_WORDS.noPicture);
      else {
        const files = listOf(store, 'files').map((item) => String(item['id']));
        const day = listOf(store, 'days').at(-1)?.['id'] as string | undefined;
        const photo = newItemId('photo');
        const kept = keepPhoto(taken, pictureOf(name), files, { id: photo, day, at: localTimeOf(new Date()) });
        onPart([...kept.changes, { at: `${place}/photo`, was: layer['photo'], to: photo }], 'photo');
      }
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
    }
    setBusy(false);
  };
  const sha256 = hashOf(String(layer['photo'] ?? ''), listOf(store, 'exhibits'), listOf(store, 'files'));
  return (
    <div className="layer-photo">
      <MemberField node={layerForm(form.case, String(layer['is']))} place={place} member="photo" label={STACK_WORDS.photoOfLayer} />
      <button type="button" className="btn take-photo" disabled={busy} onClick={() => choose.current?.click()}>
        {busy ? STACK_WORDS.onItsWay : STACK_WORDS.takePhoto} <kbd>{STACK_KEYS.photo}</kbd>
      </button>
      <input
        ref={choose}
        type="file"
        accept="image/*"
        capture="environment"
        className="for-ears"
        tabIndex={-1}
        aria-label={photoOf(name)}
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          if (file !== undefined) void bring(file);
          event.target.value = '';
        }}
      />
      {sha256 !== null && <img src={thumbOf(id, sha256)} alt={pictureOf(name)} height="72" />}
      {trouble !== '' && (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
    </div>
  );
}

function hashOf(photo: string, exhibits: readonly Tree[], files: readonly Tree[]): string | null {
  const file = exhibits.find((item) => item['id'] === photo)?.['file'];
  const sha256 = files.find((item) => item['id'] === file)?.['sha256'];
  return typeof sha256 === 'string' ? sha256 : null;
}
