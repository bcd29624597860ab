import PDFDocument from 'pdfkit';
import type { SheetData } from '../sheet-data';
import { areaOf } from './area';
import { HeadAndFoot, type Title } from './head-and-foot';
import { PageLabels } from './page-labels';
import { Pen } from './pen';
import { Sheet } from './sheet';
import { Tags } from './tags';
import { Typefaces } from './typefaces';
import { tellingOf } from './telling';

type How = { turned?: 'portrait' | 'landscape'; isTagged?: boolean };

export function openSheet(data: SheetData, title: Title, { turned = 'portrait', isTagged = true }: How = {}): Sheet {
  const area = areaOf(data.paper, turned);
  const document = emptyDocument(data, title, [area.paper.width, area.paper.height], isTagged);
  const typefaces = new Typefaces(document);
  const pen = new Pen(document, typefaces, new Tags(document, isTagged));
  const telling = tellingOf(data);
  const labels = new PageLabels(document, typefaces);
  const headAndFoot = new HeadAndFoot(pen, area, telling, labels, data, title);
  return new Sheet({ pen, area, ...telling, headAndFoot });
}

/** The same data make the same bytes, so dates inside are those of printing. */
function emptyDocument(
  { establishment, printed, language = 'en' }: SheetData,
  title: Title,
  size: number[],
  tagged: boolean,
): PDFKit.PDFDocument {
  const made = new Date(printed.at);
  return new PDFDocument({
    size,
    margin: 0,
    autoFirstPage: false,
    pdfVersion: '1.7',
    lang: language,
    displayTitle: true,
    font: '',
    tagged,
    info: {
      Title: `${title.name}: ${title.about}`,
      Author: establishment.name,
      Subject: title.name,
      Creator: 'Larderbook',
      Producer: 'Larderbook',
      CreationDate: made,
      ModDate: made,
    },
  });
}
