/** The page of one job: its sheet, with the shop whose wires and materials it chooses from. */
import { type ReactNode, useEffect, useState } from 'react';
import type { ShopRecord } from '../../server/message/answers.ts';
import { Masthead } from '../look/masthead.tsx';
import { type OpenSheet, useSheet } from '../state/open-sheet.ts';
import { fetchShop } from '../state/server.ts';
import { OpenPage } from './open-page.tsx';
import { SheetView } from './sheet-view.tsx';

const SheetPage = ({ id }: { readonly id: string }): ReactNode => (
  <OpenPage id={id}>{(sheet) => <Opened key={id} sheet={sheet} />}</OpenPage>
);
export default SheetPage;

const Opened = ({ sheet }: { readonly sheet: OpenSheet }): ReactNode => {
  const shop = useShop();
  const id = useSheet(sheet, (s) => s.record?.id);
  const name = useSheet(sheet, (s) => s.record?.name) ?? '';
  const lengthUnit = useSheet(sheet, (s) => s.lengthUnit);
  const finishUnit = useSheet(sheet, (s) => s.finishUnit);
  const theme = useSheet(sheet, (s) => s.theme);
  useEffect(() => {
    document.title = `${name} · Kerfwright`;
  }, [name]);
  return (
    <>
      <Masthead preferences={{ lengthUnit, finishUnit, theme }} job={id} onPrefer={(part) => sheet.actions.show(part)} />
      <SheetView sheet={sheet} shop={shop} />
    </>
  );
};

const useShop = (): ShopRecord['shop'] | undefined => {
  const [shop, setShop] = useState<ShopRecord['shop'] | undefined>();
  useEffect(() => {
    let wanted = true;
    void fetchShop().then((answer) => {
      if (wanted && answer.kind === 'ok') setShop(answer.value.shop);
    });
    return () => {
      wanted = false;
    };
  }, []);
  return shop;
};
