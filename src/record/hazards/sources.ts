/** Publications that several entries rest on, each named once with how far it was read. */
import type { HazardSource } from './hazard.ts';

const hse = 'Health and Safety Executive (UK)';
const osha = 'Occupational Safety and Health Administration (USA)';
const niosh = 'National Institute for Occupational Safety and Health (USA)';
const epa = 'Environmental Protection Agency (USA)';

export const PRACTICE = (title: string): HazardSource => ({
  title,
  publisher: 'workshop trade',
  mark: 'common practice',
});

export const UNDER_VEHICLES: HazardSource = {
  title: 'Working under vehicles (motor vehicle repair)',
  publisher: hse,
  address: 'https://www.hse.gov.uk/mvr/mechanical-repair/under-vehicles.htm',
  mark: 'found',
};
export const INDG434: HazardSource = {
  title: 'Working safely under motor vehicles being repaired, INDG434',
  publisher: hse,
  mark: 'found',
};
export const HOME_PETROL: HazardSource = {
  title: 'Staying safe while storing and using petrol',
  publisher: hse,
  address: 'https://www.hse.gov.uk/fireandexplosion/staying-safe.htm',
  mark: 'found',
};
export const PETROL_RECOVERY: HazardSource = {
  title: 'Safe recovery of petrol from end-of-life vehicles, WISH WASTE 10',
  publisher: 'Waste Industry Safety and Health Forum (UK)',
  edition: 'issue 2, August 2015',
  mark: 'found',
};
export const CLP_FLAMMABLE: HazardSource = {
  title: 'Regulation (EC) 1272/2008, label elements for flammable liquids (H224, H225, H226)',
  publisher: 'European Union',
  locator: 'Annex I, Table 2.6.2',
  address: 'https://reachlex.eu/en/clp/annex-i-part-2-physical-hazards-6-3',
  mark: 'found',
};
export const POCKET_GUIDE_GASOLINE: HazardSource = {
  title: 'Pocket Guide to Chemical Hazards, gasoline (CAS 8006-61-9)',
  publisher: niosh,
  mark: 'memory',
};
export const CO_IDLH: HazardSource = {
  title: 'IDLH documentation: carbon monoxide (CAS 630-08-0)',
  publisher: niosh,
  edition: 'May 1994',
  locator: 'limit list',
  address: 'https://cdc.gov/Niosh/idlh/630080.html',
  mark: 'found',
};
export const CO_CPSC: HazardSource = {
  title: 'Carbon monoxide questions and answers',
  publisher: 'Consumer Product Safety Commission (USA), reproduced by the City of Greer',
  address: 'https://cityofgreer.org/Faq.aspx?QID=66',
  mark: 'found',
};
export const CO_AIHA: HazardSource = {
  title: 'Effects of carbon monoxide levels',
  publisher: 'American Industrial Hygiene Association, reproduced',
  address: 'https://docest.com/doc/214024/carbon-monoxide-co',
  mark: 'found',
};
export const EH40: HazardSource = {
  title: 'EH40/2005 Workplace exposure limits',
  publisher: hse,
  edition: '4th ed., 2020',
  locator: 'Table 1',
  mark: 'memory',
};
export const BATTERIES: HazardSource = {
  title: 'Using electric storage batteries safely, INDG139',
  publisher: hse,
  mark: 'found',
};
export const CLP_ACID: HazardSource = {
  title: 'Regulation (EC) 1272/2008, sulphuric acid above 15 %: Skin Corr. 1A (H314)',
  publisher: 'European Union',
  locator: 'Annex VI, Table 3, index 016-020-00-8',
  mark: 'memory',
};
export const AIR_242: HazardSource = {
  title: '29 CFR 1910.242(b), compressed air used for cleaning',
  publisher: osha,
  address: 'https://www.osha.gov/laws-regs/standardinterpretations/1994-01-14',
  mark: 'found',
};
export const ASBESTOS_EPA: HazardSource = {
  title: 'Current best practices for preventing asbestos exposure among brake and clutch repair workers',
  publisher: epa,
  edition: 'March 2007',
  address: 'https://nepis.epa.gov/Exe/ZyPURL.cgi?Dockey=P1000CZL.txt',
  mark: 'found',
};
export const ASBESTOS_OSHA: HazardSource = {
  title: 'Asbestos: automotive brake and clutch repair work, SHIB 07-26-2006',
  publisher: osha,
  mark: 'found',
};
export const ISOCYANATES: HazardSource = {
  title: 'Guidance on working with 2-pack isocyanate paints',
  publisher: hse,
  address: 'https://www.hse.gov.uk/mvr/bodyshop/isocyanates.htm',
  mark: 'found',
};
export const TYRES: HazardSource = {
  title: 'Tyre removal, replacement and inflation',
  publisher: hse,
  address: 'https://www.hse.gov.uk/mvr/mechanical-repair/tyreremoval.htm',
  mark: 'found',
};
export const MULTIPIECE_WHEELS: HazardSource = {
  title: 'Fatal accident during maintenance on multipiece vehicle wheel with pneumatic tyres',
  publisher: hse,
  address: 'https://hse.gov.uk/mvr/mechanical-repair/wheel-and-tyres.htm',
  mark: 'found',
};
export const NOISE_NIOSH: HazardSource = {
  title: 'Recommended exposure limit for noise, with the OSHA limit beside it',
  publisher: niosh,
  mark: 'found',
};
export const HOT_WORK: HazardSource = {
  title: 'Hot work on small tanks and drums, INDG314',
  publisher: hse,
  edition: 'rev. 1, May 2013',
  mark: 'found',
};
export const HOT_WORK_ALERT: HazardSource = {
  title: 'Deadly explosions during cutting of drums and containers, FOD 8-2010',
  publisher: hse,
  edition: '18 November 2010',
  address: 'https://www.hse.gov.uk/safetybulletins/hotwork.htm',
  mark: 'found',
};
export const SKIN: HazardSource = {
  title: 'Skin problems in motor vehicle repair businesses',
  publisher: hse,
  address: 'https://hse.gov.uk/skin/employ/highrisk/mvr.htm',
  mark: 'found',
};
export const USED_OIL_IARC: HazardSource = {
  title: 'The facts on used mineral oils (IARC Group 1)',
  publisher: 'Roadmap on Carcinogens',
  edition: 'January 2025',
  address: 'https://stopcarcinogensatwork.eu/fact/used-mineral-oils',
  mark: 'found',
};
export const LEAD_RRP: HazardSource = {
  title:
    'Renovation, Repair and Painting rule: open flame, heat guns above 1,100 °F and unshrouded power tools are prohibited on lead paint',
  publisher: epa,
  locator: '40 CFR 745.85 (locator from memory)',
  mark: 'found',
};
export const HANDLING: HazardSource = {
  title: 'Manual handling at work, a brief guide, INDG143',
  publisher: hse,
  locator: 'lifting and lowering filter',
  mark: 'memory',
};
export const GRINDER_GUARDS: HazardSource = {
  title: '29 CFR 1910.243, guarding of portable grinders',
  publisher: osha,
  mark: 'found',
};
export const GLYCOL: HazardSource = {
  title: 'Ethylene glycol: medical management and toxicological profile',
  publisher: 'Agency for Toxic Substances and Disease Registry (USA)',
  mark: 'memory',
};
