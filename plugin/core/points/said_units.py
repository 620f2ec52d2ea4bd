"""Units and ways to write angles, as header words and comment lines say them."""

from __future__ import annotations

import re
from enum import Enum
from typing import Dict, List, NamedTuple, Optional

from ..units import LengthUnit
from .vocabulary import each


class AngleForm(Enum):
    """How latitudes and longitudes are written; ``value`` is the word on the command line.

    DEGREES: decimal degrees, or degrees, minutes and seconds with signs or blanks between. DMS: degrees, then two
    digits of minutes and two of seconds behind the mark (48.07021 is 48 degrees 7 minutes 2.1 seconds).
    DDMM: degrees and minutes without a mark (4807.035); DDMMSS: the same with seconds (480702.1). The three behind
    radians, minutes and seconds of arc are parts of a degree. RUN_1 to RUN_5: degrees, minutes and seconds in a run of
    digits, the last of them so many decimals of a second (48070210 is RUN_2). AROUND: decimal degrees with longitudes
    from 0 to 360; WEST: decimal degrees with longitudes that count to the west.
    """

    DEGREES = "degrees"
    DMS = "dd.mmss"
    DDMM = "ddmm.m"
    DDMMSS = "ddmmss.s"
    GON = "gon"
    RADIANS = "radians"
    MINUTES = "arcmin"
    SECONDS = "arcsec"
    MILLIONTHS = "1e-6"
    TEN_MILLIONTHS = "1e-7"
    BILLIONTHS = "1e-9"
    RUN_1 = "ddmmsss"
    RUN_2 = "ddmmssss"
    RUN_3 = "ddmmsssss"
    RUN_4 = "ddmmssssss"
    RUN_5 = "ddmmsssssss"
    AROUND = "0-360"
    WEST = "west"


#: Degrees in one unit of those forms that are a plain number.
DEGREES_IN = {
    AngleForm.DEGREES: 1.0, AngleForm.GON: 0.9, AngleForm.RADIANS: 57.29577951308232, AngleForm.MINUTES: 1.0 / 60.0,
    AngleForm.SECONDS: 1.0 / 3600.0, AngleForm.MILLIONTHS: 1e-6, AngleForm.TEN_MILLIONTHS: 1e-7,
    AngleForm.BILLIONTHS: 1e-9, AngleForm.WEST: 1.0,
}  # fmt: skip
#: Decimals of a second in a run of digits.
RUNS = {
    AngleForm.RUN_1: 1, AngleForm.RUN_2: 2, AngleForm.RUN_3: 3, AngleForm.RUN_4: 4, AngleForm.RUN_5: 5,
}  # fmt: skip

UNITS: Dict[str, LengthUnit] = {
    **dict.fromkeys(
        each("m metre metres meter meters metern metro metros mts mtr mtrs metri metr metry м метр метры"),
        LengthUnit.METRE,
    ),
    **dict.fromkeys(each("ft feet foot pied pieds fuss fuß pie pies piedi pes voet"), LengthUnit.FOOT),
    **dict.fromkeys(
        each("""ift intft ftint ifeet internationalft internationalfoot internationalfeet intfoot intfeet intlft
        intlfoot intlfeet ftintl ftinternational"""),
        LengthUnit.FOOT,
    ),
    **dict.fromkeys(
        each("""usft ftus ussurveyfoot ussurveyfeet usfoot usfeet surveyfeet surveyfoot sft surveyft ussft ussurveyft
        usfts ftussurvey"""),
        LengthUnit.US_SURVEY_FOOT,
    ),
    **dict.fromkeys(each("mm millimetre millimetres millimeter millimeters milimetros мм"), LengthUnit.MILLIMETRE),
    **dict.fromkeys(each("cm centimetre centimetres centimeter centimeters zentimeter centimetros centimetri см"),
                    LengthUnit.CENTIMETRE),
    **dict.fromkeys(each("dm decimetre decimetres decimeter decimeters dezimeter decimetros дм"), LengthUnit.DECIMETRE),
    **dict.fromkeys(each("km kilometre kilometres kilometer kilometers kilometern kilometros chilometri км"),
                    LengthUnit.KILOMETRE),
    **dict.fromkeys(each("inch inches zoll pouce pouces pulgada pulgadas pollici"), LengthUnit.INCH),
    **dict.fromkeys(each("yd yds yard yards yarda yardas"), LengthUnit.YARD),
}  # fmt: skip
#: Words for a foot that do not say which.
VAGUE = frozenset(each("ft feet foot pied pieds fuss fuß pie pies piedi pes voet"))
#: Lengths that are not read: where a header says one, only the user can say what to do.
STRANGE = frozenset(
    each("""chain chains ch link links lk rod rods fathom fathoms fm mile miles mi nm nmi toise vara varas ftse ftcla
    ftind indianfoot clarkefoot gf goldcoastfoot ruthe klafter furlong um μm micron microns micrometre micrometres
    hm dam hectometre decametre""")
)  # fmt: skip

_ANGLES: Dict[str, AngleForm] = {
    **dict.fromkeys(each("dms gms degminsec"), AngleForm.DMS),
    **dict.fromkeys(each("dmm nmea degmin"), AngleForm.DDMM),
    **dict.fromkeys(each("gon gons grad grads gradian gradians grade grades neugrad"), AngleForm.GON),
    **dict.fromkeys(each("arcmin arcmins arcminute arcminutes bogenminuten bogenmin"), AngleForm.MINUTES),
    **dict.fromkeys(each("arcsec arcsecs arcsecond arcseconds bogensekunden bogensek"), AngleForm.SECONDS),
    **dict.fromkeys(each("e6 microdeg microdegree microdegrees udeg μdeg"), AngleForm.MILLIONTHS),
    **dict.fromkeys(each("e7"), AngleForm.TEN_MILLIONTHS),
    **dict.fromkeys(each("e9 nanodeg nanodegree nanodegrees ndeg"), AngleForm.BILLIONTHS),
    **dict.fromkeys(each("rad rads radian radians radiant radianes radiants"), AngleForm.RADIANS),
    **dict.fromkeys(
        each("""deg degs degree degrees dd decimaldegrees decimaldegree degdecimal decdeg dezimalgrad degresdecimaux
        ddeg         gradosdecimales gradidecimali graden altgrad gradd"""),
        AngleForm.DEGREES,
    ),
}


class Said(NamedTuple):
    """What words say of a unit. ``vague``: a foot, and not which; ``strange``: a length that is not read."""

    unit: Optional[LengthUnit] = None
    vague: bool = False
    angle: Optional[AngleForm] = None
    strange: str = ""

    @property
    def nothing(self) -> bool:
        return self == Said()


_SCALED = re.compile(
    r"(?P<top>[0-9]+(?:[.,][0-9]+)?)?(?:/|[eE]|\s*[x*·]?\s*10\s*\^\s*)?(?P<below>(?<=/)[0-9]+|(?<=[eE^])[+-]?[0-9]+)?"
    r"\s*[x*·]?\s*(?P<unit>[^\W\d_]{1,12}|°)?"
)
_FILLING = frozenset(each("unit units einheit unite unidad in en"))


def scaled(text: str) -> Said:
    """What a number and a unit say together, such as "0.01 m", "1/100 m", "1e-7 deg" or, of degrees, "1e7" alone."""
    match = _SCALED.fullmatch(text.strip())
    if match is None or not (match["top"] or match["below"]):
        return Said()
    top = float((match["top"] or "1").replace(",", "."))
    below = match["below"]
    if below and abs(int(below)) > 1_000_000:
        return Said()
    factor = top if not below else top / float(below) if "/" in text else top * 10.0 ** max(-12, min(12, int(below)))
    word = (match["unit"] or "").casefold()
    if not word or word == "°" or _ANGLES.get(word) is AngleForm.DEGREES:
        if not word and factor > 1.0:
            factor = 1.0 / factor  # degrees times so many
        if not word and factor > 1e-5:
            return Said()
        form = (
            next((one for one, size in DEGREES_IN.items() if abs(size / factor - 1.0) < 1e-9), None) if factor else None
        )
        return Said(angle=form) if form is not None else Said(strange=text.strip())
    if word not in UNITS or factor == 0.0:
        return Said()
    metres = factor * UNITS[word].metres
    unit = next((one for one in LengthUnit if abs(one.metres / metres - 1.0) < 1e-9), None)
    return Said(unit) if unit is not None else Said(strange=text.strip())


def said_by(tokens: List[str], bracketed: bool = False) -> Said:
    """What folded words say, such as ["us", "survey", "feet"]. ``bracketed``: they stand in brackets, where "in" is
    the inch.
    """
    word = "".join(tokens)
    if bracketed and len(tokens) > 1 and tokens[0] in _FILLING:
        return said_by(tokens[1:], True)
    if word in UNITS:
        return Said(UNITS[word], word in VAGUE)
    if word in _ANGLES:
        return Said(angle=_ANGLES[word])
    if re.fullmatch("[dg]{1,3}m{1,2}s+", word):
        return Said(angle=AngleForm.DMS)
    if re.fullmatch("[dg]{1,3}m{2,}", word):
        return Said(angle=AngleForm.DDMM)
    if bracketed and word == "in":
        return Said(LengthUnit.INCH)
    if word in STRANGE and (bracketed or len(word) > 3):
        return Said(strange=word)
    return Said()


def angle_sign(text: str) -> Optional[AngleForm]:
    """The way to write angles that signs in a header word say: ``°'"``, ``° ' "`` or a lone degree sign."""
    if "°" not in text:
        return None
    return AngleForm.DMS if re.search("[\"″'′]", text) else AngleForm.DEGREES
