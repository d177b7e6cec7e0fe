/** Words that no work of the hands is done to, whatever verb stands beside them: measures, what is worn or eaten, and who is about. */

const MEASURES =
  'mm cm m km l ml kg g thou litre litres millilitre millilitres millimetre millimetres minute minutes min mins hour hours hrs day days night morning evening week weeks month year years turn turns click clicks inch inches foot feet psi bar volt volts amp amps degree degrees time times go goes pound pounds euro euros quid crowns percent quarter quarters tenth tenths hundredth hundredths mil metre metres measurement pence mile miles seconds kilometre kilometres';
const WORN =
  'glasses goggles glove gloves mask specs spectacles visor hood apron overalls hat hand hands finger fingers thumb thumbs knuckle knuckles knee knees hair sleeves wrist';
const OF_THE_HOUSE =
  'tea coffee kettle cake soup pie sandwich sandwiches beer lunch dinner supper breakfast biscuit biscuits sock washing dog cat mouse child music radio stove shop place money price cheque bill list signals noise note notes mistake sense difference mess start hearing street video film';
const OF_NO_KIND =
  'proud frm fr abt way lot bit thing things something nothing anything job mind moment half rest other others one ones two three four five six everything day the';

const list = (words: string): string[] => words.split(' ');
const NOT = new Set([...list(MEASURES), ...list(WORN), ...list(OF_THE_HOUSE), ...list(OF_NO_KIND)]);

/** Whether a thing's name ends in a word that is no thing to work on. */
export const notWorkedOn = (object: string): boolean => {
  const last = object.split(' ').at(-1) ?? '';
  return (
    NOT.has(last) ||
    last.length < 2 ||
    last.endsWith('.') ||
    /^(?:end|ends|side|back|elbow|eyes?|front|rear|top|bottom|middle|place)$/.test(object) ||
    /\d/.test(last) ||
    /\bface (?:shield|mask)$/.test(object)
  );
};
