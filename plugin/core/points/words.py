"""Header words of survey files in English, French, German and Spanish, and the role each names.

The words are those of the trade and of dictionaries (common practice, no source). Case, accents, blanks,
dashes and units in brackets do not matter.
"""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass
from functools import cache
from typing import Dict, FrozenSet, List, Optional, Tuple

from ..units import LengthUnit


def _each(words: str) -> List[str]:
    return words.split()


#: Words that leave no doubt, of all four languages, by role.
_CERTAIN: Dict[str, str] = {
    "name": """name id fid pt pnt point pointid pointname pointno pointnumber pointnum ptid ptno ptnum ptname number
        num no nr stationname
        nom numero matricule nopoint numpoint numeropoint numerodupoint numerodepoint nomdupoint nompoint
        punkt punktnr punktnummer punktname punktid pktnr pkt pnr ptnr nummer bezeichnung
        punto pto nombre numeropunto nopunto nombrepunto nombredelpunto numerodepunto numerodelpunto idpunto""",
    "easting": """easting east eastings eastcoord
        est coordest estant
        ost rechts rechtswert rw ostwert oste
        este coordenadaeste coordeste""",
    "northing": """northing north northings northcoord
        nord coordnord
        hoch hochwert nordwert hw
        norte coordenadanorte coordnorte""",
    "height": """height elevation elev z heightmsl orthometricheight orthoheight elevationmsl msl reducedlevel rl
        altitude alt altitudengf hauteur altitudeorthometrique hauteurorthometrique cote
        hohe hoehe gelandehohe gelaendehoehe hohenn hoehenn nhn hohenhn orthometrischehohe gebrauchshohe hoehenhn
        altura cota elevacion altitud cotaortometrica alturaortometrica elevacionortometrica altitudortometrica""",
    "ellipsoidal_height": """ellipsoidalheight ellipsoidheight ellipheight ellheight hell ellh hellipsoidal heightell
        ellipsoidalelevation
        hauteurellipsoidale hauteurellipsoide altitudeellipsoidale hellipsoidale
        ellipsoidischehohe ellipsoidhohe ellipsoidischehoehe ellipsoidhoehe hoheell hoheellipsoid
        alturaelipsoidal altitudelipsoidal alturaelipsoide helipsoidal cotaelipsoidal elevacionelipsoidal""",
    "latitude": "latitude lat latitud breite breitengrad geographischebreite geogrbreite",
    "longitude": """longitude lon long lng longitud lange laenge langengrad laengengrad geographischelange
        geographischelaenge""",
    "code": """code featurecode pointcode fieldcode desc description feature descriptor
        codepoint codeterrain libelle nature designation
        punktcode kode beschreibung objektart punktart art
        codigo descripcion desc codigopunto""",
    "sigma_h": """sigmah hrms hsigma sigmahz horizontalprecision horizontalaccuracy horizontalsigma hprecision
        haccuracy hacc stdh sdh precisionh precisionhorizontal
        precisionhorizontale precisionplanimetrique ecarttypeh precisionplani
        lagegenauigkeit genauigkeitlage prazisionlage standardabweichunglage sigmalage lagestd
        precisionplanimetrica desviacionh exactitudhorizontal""",
    "sigma_v": """sigmav vrms vsigma sigmaz verticalprecision verticalaccuracy verticalsigma vprecision vaccuracy
        vacc stdv sdv precisionv precisionvertical
        precisionverticale precisionaltimetrique ecarttypev precisionalti
        hohengenauigkeit hoehengenauigkeit genauigkeithohe genauigkeithoehe prazisionhohe standardabweichunghohe
        sigmahohe sigmahoehe hohenstd
        precisionaltimetrica desviacionv exactitudvertical""",
    "fix": """fix fixtype fixquality solution solutiontype positiontype gnssfix quality
        typedesolution qualitedufix qualitegnss
        losung losungstyp loesung loesungstyp fixtyp positionstyp
        solucion tipodesolucion tiposolucion calidaddelfix""",
    "satellites": """satellites sats sat nsat nsats numsat numsats numberofsatellites satellitecount svs usedsatellites
        nbsat nbsatellites nombredesatellites nbresatellites
        satelliten anzahlsatelliten anzsat anzahlsat satanzahl
        satelites numsatelites numerodesatelites nsatelites""",
    "pdop": "pdop",
    "age": """age correctionage ageofcorrection ageofcorrections agecorrection agecorrections diffage ageofdifferential
        agediff agedgps agertk rtkage
        agecorrections agedescorrections agedelacorrection
        korrekturalter alterderkorrektur alterkorrektur alterderkorrekturdaten
        edadcorreccion edaddelacorreccion edadcorrecciones antiguedadcorreccion""",
    "epochs": """epochs numepochs nepochs numberofepochs epochcount numobservations numberofobservations nobs numobs
        epoques nbepoques nombredepoques nbobservations nombredobservations
        epochen anzahlepochen anzepochen anzahlmessungen anzahlbeobachtungen
        epocas numepocas numerodeepocas numobservaciones numerodeobservaciones""",
    "tilt": """tilt tiltangle tiltdeg poletilt
        inclinaison devers inclinaisoncanne
        neigung neigungswinkel stabneigung lotstabneigung
        inclinacion inclinacionjalon""",
    "pole_height": """poleheight rodheight antennaheight targetheight heightofpole
        hauteurcanne hauteurantenne hauteurdecanne hauteurdantenne
        stabhohe stabhoehe antennenhohe antennenhoehe lotstabhohe lotstabhoehe
        alturajalon alturaantena alturadeantena alturabaston alturadeljalon""",
    "time": """time datetime timestamp date utc utctime gpstime dateandtime localtime
        heure dateheure horodatage dateetheure
        zeit uhrzeit zeitpunkt datum datumzeit datumuhrzeit zeitstempel
        hora fechahora fecha tiempo fechayhora""",
}  # fmt: skip

#: Words that mean one thing or another, depending on the words beside them.
DOUBTFUL = frozenset({"x", "y", "n", "e", "h", "r", "o"})
#: Words that tell what a height or position refers to, and words that add nothing; left off when the rest is known.
_QUALIFIERS = frozenset(
    _each("""utm grid gauss kruger krueger gk mga nztm bng lambert lambert93 l93 rgf93 l2e cc lv95 etrs89 wgs84 wgs etrs
    grs80 dhhn dhhn92 dhhn2016 nhn nn msl ngf ign69 evrf navd88 mean sea level above uber ueber u ub normal null
    coordinate coordinates coord coords coordonnee coordonnees koordinate koordinaten koord coordenada coordenadas
    value values wert valeur valor local lokal locale projected proj plan ground de la le du des del der die das
    von en in of dd deg decimal decimale dezimal dezimalgrad dms""")
)
_GEODETIC = frozenset({"wgs84", "etrs89", "grs80", "wgs"})

_UNITS: Dict[str, LengthUnit] = {
    **dict.fromkeys(_each("m metre metres meter meters metern metro metros mts mtr"), LengthUnit.METRE),
    **dict.fromkeys(_each("ft feet foot ift intft pied pieds fuss fuß pie pies"), LengthUnit.FOOT),
    **dict.fromkeys(_each("usft ftus ussurveyfoot ussurveyfeet usfoot usfeet surveyfeet"), LengthUnit.US_SURVEY_FOOT),
}  # fmt: skip

#: Words that only one of the languages has, to tell whether O is east or west.
_GERMAN = frozenset(_each("rechts hoch breite lange laenge hohe hoehe punkt zeit nummer ost wert koordinate"))
_ROMANCE = frozenset(
    _each("""hauteur numero longitud latitud altura cota nombre punto ouest oeste codigo heure hora
    descripcion elevacion libelle matricule""")
)


@dataclass(frozen=True)
class Word:
    """What a header word says. ``role``: "" where nothing; ``doubtful``: one of :data:`DOUBTFUL`, else "";
    ``unit``: the unit it states, None where none.
    """

    role: str = ""
    doubtful: str = ""
    unit: Optional[LengthUnit] = None


@cache
def _table() -> Dict[str, str]:
    return {word: role for role, words in _CERTAIN.items() for word in words.split()}


def fold(word: str) -> str:
    """Small letters without accents, everything else but letters and digits as one blank."""
    word = re.sub(r"\b([nN])[°º]", r"\1o", word.strip().lstrip("#"))
    plain = unicodedata.normalize("NFKD", word.casefold())
    plain = "".join(sign for sign in plain if not unicodedata.combining(sign))
    return re.sub(r"[^a-z0-9]+", " ", plain).strip()


def read_word(word: str) -> Word:
    """What one header word says by itself."""
    if len(word) > 80:
        return Word()
    bare, unit, inside = _take_unit(word)
    tokens = fold(bare).split()
    if inside and tokens:
        told = _meaning([*tokens, *inside], unit)
        other = _meaning(inside, unit)
        if told.role or (other.role and _meaning(tokens, unit).role in ("", other.role)):
            return told if told.role else other
    if unit is None and len(tokens) > 1:
        tokens, unit = _unit_at_end(tokens)
    if not tokens:
        return Word(unit=unit)
    return _meaning(tokens, unit)


def _meaning(tokens: List[str], unit: Optional[LengthUnit]) -> Word:
    ellipsoid = [token for token in tokens if re.match("ell?ips", token)]
    if ellipsoid and len(ellipsoid) < len(tokens):
        rest = _meaning([token for token in tokens if token not in ellipsoid], unit)
        if rest.role in ("height", "ellipsoidal_height") or rest.doubtful == "h":
            return Word("ellipsoidal_height", "", unit)
    role, doubtful = _look_up(tokens)
    if not role and not doubtful:
        other = [token for token in tokens if token not in _QUALIFIERS and not re.fullmatch(r"[0-9]+[a-z]?", token)]
        role, doubtful = _look_up(other) if other and other != tokens else ("", "")
        if role == "height" and _GEODETIC & set(tokens):
            role = "ellipsoidal_height"
    return Word(role, doubtful, unit)


def _look_up(tokens: List[str]) -> Tuple[str, str]:
    joined = "".join(tokens)
    if joined in DOUBTFUL:
        return "", joined
    return _table().get(joined, ""), ""


def _take_unit(word: str) -> Tuple[str, Optional[LengthUnit], List[str]]:
    """The word without what stands in brackets, the unit that this is, and its words where it is none."""
    unit, words = None, []
    for inside in re.findall(r"[\(\[]([^\)\]]*)", word):
        said = _UNITS.get(fold(inside).replace(" ", ""))
        unit = said or unit
        words += fold(inside).split() if said is None else []
    return re.sub(r"[\(\[][^\)\]]*[\)\]]?", " ", word), unit, words


def _unit_at_end(tokens: List[str]) -> Tuple[List[str], Optional[LengthUnit]]:
    for count in (3, 2, 1):
        unit = _UNITS.get("".join(tokens[-count:])) if len(tokens) > count else None
        if unit is not None:
            rest = tokens[:-count]
            return (rest[:-1] if len(rest) > 1 and rest[-1] in ("in", "en") else rest), unit
    return tokens, None


def language_of_o(words: Tuple[str, ...]) -> str:
    """What the letter O behind a longitude means by the language of the header: "E" (Ost), "W" (Ouest, Oeste)
    or "" where the words do not tell.
    """
    tokens: FrozenSet[str] = frozenset(token for word in words for token in fold(word).split())
    german, romance = bool(tokens & _GERMAN), bool(tokens & _ROMANCE)
    return "" if german == romance else "E" if german else "W"


def roles_by_words(words: List[Word]) -> Tuple[Dict[str, List[int]], Tuple[int, ...]]:
    """Role to the columns whose word says so, doubtful words settled by those beside them; and the columns
    X and Y, where easting and northing are only named so (either may be meant by either).
    """
    found: Dict[str, List[int]] = {}
    doubtful: Dict[str, List[int]] = {}
    for place, word in enumerate(words):
        if word.role:
            found.setdefault(word.role, []).append(place)
        elif word.doubtful:
            doubtful.setdefault(word.doubtful, []).append(place)
    _settle_letters(found, doubtful)
    pair: Tuple[int, ...] = ()
    if not ("easting" in found or "northing" in found) and all(len(doubtful.get(sign, ())) == 1 for sign in "xy"):
        pair = (doubtful["x"][0], doubtful["y"][0])
    return found, pair


def _settle_letters(found: Dict[str, List[int]], doubtful: Dict[str, List[int]]) -> None:
    def take(sign: str, role: str) -> None:
        found.setdefault(role, []).extend(doubtful.pop(sign))

    if "r" in doubtful and "h" in doubtful and "height" in found:
        take("r", "easting")  # Rechts and Hoch beside a height
        take("h", "northing")
    for sign in ("e", "o"):
        if sign in doubtful and "easting" not in found and ("n" in doubtful or "northing" in found):
            take(sign, "easting")
    if "n" in doubtful:
        plan = "easting" in found and "northing" not in found
        if plan:
            take("n", "northing")
        elif "name" not in found:
            take("n", "name")
    if "h" in doubtful and "height" not in found:
        take("h", "height")
