import type { XmlElement } from '../../xml/element.ts';

/** Elements of a `did` that tell the same thing of a unit in several ways. */
const IN_DID: Readonly<Record<string, string>> = {
  ...{ unitdate: 'dates', unitdatestructured: 'dates' },
  ...{ physdesc: 'extents', physdescset: 'extents', physdescstructured: 'extents', materialspec: 'extents' },
  ...{ extent: 'extents', dimensions: 'extents', physfacet: 'extents' },
  ...{ dao: 'copies', daoset: 'copies', daogrp: 'copies', daoloc: 'copies' },
  ...{ didnote: 'notes', note: 'notes', footnote: 'notes' },
};

/** Elements of running text that the model knows by a field of their own. */
const OWN = new Set(
  (
    'head did dsc thead controlaccess bioghist custodhist acqinfo scopecontent appraisal accruals arrangement userestrict ' +
    'phystech otherfindaid originalsloc altformavail relatedmaterial separatedmaterial bibliography prefercite processinfo'
  ).split(' '),
);
const BESIDE: Readonly<Record<string, string>> = {
  ...{ accessrestrict: 'access', legalstatus: 'access', organization: 'arrangement' },
};

/** Elements that hold several notes together. */
export const WRAPPERS: ReadonlySet<string> = new Set(['descgrp', 'admininfo', 'add']);

/** Says which elements tell of the same thing, so that they are written anew together where it has changed. */
export type GroupOf = (element: XmlElement) => string;

export const groupInDid: GroupOf = ({ name }) => IN_DID[name] ?? name;

/** Whatever is no field of its own is one of the general notes. */
export const groupBeside: GroupOf = ({ name }) =>
  BESIDE[name] ?? (OWN.has(name) || WRAPPERS.has(name) ? name : 'notes');

export const groupByName: GroupOf = ({ name }) => name;

/** Elements made up of others that stand for different things: each of those is looked at by itself. */
export const STRUCTURES: ReadonlySet<string> = new Set(
  (
    'controlaccess filedesc titlestmt editionstmt publicationstmt notestmt profiledesc revisiondesc maintenancehistory ' +
    'sources maintenanceagency control eadheader'
  ).split(' '),
);
