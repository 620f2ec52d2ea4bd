"""What a header word names: the role of its column and the unit of its values.

Case, accents, blanks and dashes do not matter. The words are in :mod:`.vocabulary`.
"""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass, replace
from functools import cache
from typing import Dict, FrozenSet, List, Optional, Tuple

from ..units import LengthUnit
from .composed_words import composed_role, sigma_of_axis
from .said_units import UNITS, AngleForm, Said, angle_sign, said_by, scaled
from .vocabulary import CERTAIN, LEVELS, each

#: Deviations along one axis each, which make one in plan together.
_AXIS_SIGMAS = ("sigma_e", "sigma_n", "sigma_u")
#: Words that mean one thing or another, depending on the words beside them.
DOUBTFUL = frozenset({"x", "y", "n", "e", "h", "r", "o", "d", "p", "c", "depth", *_AXIS_SIGMAS})
#: Words that tell what a height or position refers to, and words that add nothing; left off when the rest is known.
_QUALIFIERS = frozenset(
    each("""utm grid gauss kruger krueger gk mga nztm bng lambert lambert93 l93 rgf93 l2e cc lv95 etrs89 wgs84 wgs etrs
    grs80 dhhn dhhn92 dhhn2016 nhn nn msl ngf ign69 evrf navd88 mean sea level above uber ueber u ub normal null
    coordinate coordinates coord coords coordonnee coordonnees koordinate koordinaten koord coordenada coordenadas
    value values wert valeur valor local lokal locale projected proj plan ground de la le du des del der die das
    von en in of dd deg decimal decimale dezimal dezimalgrad dms wspolrzedna wspolrzedne coordinata coordenata
    coordonata souradnice koordinat koordinater ortho orthometric orthometrique orthometrisch orthometrische ortometrica
    ortometrico""")
) | frozenset(level for level in LEVELS if len(level) > 2 and level != "geoid")
_FILLERS = frozenset(each("the of de la le du des del der die das von gnss gps rtk"))
_GEODETIC = frozenset({"wgs84", "etrs89", "grs80", "wgs"})

#: What a height is of, by words that stand with it.
_ANTENNA = frozenset(each("apc arp antenna antenne antena anten phase phasecentre phasecenter receiver"))
_GROUND = frozenset(each("ground terrain gelande gelaende sol terreno suelo maaiveld boden bodenpunkt spot teren"))

_OF_WATER = frozenset(each("water bottom bed eau wasser agua dna vody z below under unter sous bajo datum chart"))
#: Beside the word of a height: it counts down.
_DOWN = frozenset(each("down downward downwards abwarts abajo"))
DEPTH = frozenset(
    each("""depth depths waterdepth profondeur profondeurs tiefe tiefen wassertiefe profundidad profundidades
    profundidade profondita diepte diepten dybde dybder dybden djup djupen syvyys syvyydet glebokosc glebokosci hloubka
    hloubky hlbka hlbky dubina dubine melyseg melysegek derinlik derinlikler adancime adancimi globina globine глубина
    глубины βαθοσ""")
)
#: Columns of lengths, whose words may have a unit glued to them.
_LENGTHS = frozenset(
    {"easting", "northing", "height", "ellipsoidal_height", "sigma_h", "sigma_v", "sigma_e", "sigma_n", "pole_height"}
)

#: Words that only one of the languages has, to tell whether O is east or west.
_GERMAN = frozenset(each("rechts hoch breite lange laenge hohe hoehe punkt zeit nummer ost wert koordinate"))
_ROMANCE = frozenset(
    each("""hauteur numero longitud latitud altura cota nombre punto ouest oeste codigo heure hora
    descripcion elevacion libelle matricule""")
)


@dataclass(frozen=True)
class Word:
    """What a header word says. ``role``: "" where nothing; ``doubtful``: one of :data:`DOUBTFUL`, else "";
    ``unit``: the unit it states, None where none; ``vague``: a foot, and not which; ``angle``: how angles are
    written; ``strange``: a unit that is not read. ``of``: "antenna" or "ground" for a height of that, "depth" for one
    that counts down. ``side``: N, S, E or W of a latitude or longitude.
    """

    role: str = ""
    doubtful: str = ""
    unit: Optional[LengthUnit] = None
    vague: bool = False
    angle: Optional[AngleForm] = None
    strange: str = ""
    of: str = ""
    side: str = ""


@cache
def _table() -> Dict[str, str]:
    return {"".join(fold(word).split()): role for role, words in CERTAIN.items() for word in words.split()}


#: Letters that have no accent to take off.
_PLAIN = str.maketrans({"ł": "l", "ø": "o", "đ": "d", "ı": "i", "æ": "ae", "œ": "oe", "þ": "th"})


def fold(word: str) -> str:
    """Small letters without accents, everything else but letters and digits as one blank."""
    word = re.sub(r"\b([nN])[°º]", r"\1o", word.strip().lstrip("#"))
    plain = unicodedata.normalize("NFKD", word.casefold().translate(_PLAIN))
    plain = "".join(sign for sign in plain if not unicodedata.combining(sign))
    return re.sub(r"[\W_]+", " ", plain).strip()


def read_word(word: str) -> Word:
    """What one header word says by itself."""
    if len(word) > 80:
        return Word()
    found = _read(word)
    side, bare = _side(word) if found.role in ("", "latitude", "longitude") else ("", word)
    if not side:
        return found
    rest = found if found.role else _read(bare)
    return replace(rest, side=side) if rest.role == ("latitude" if side in "NS" else "longitude") else found


_SIDE_WORDS = {
    **dict.fromkeys(each("n north nord norte noord nordlich"), "N"),
    **dict.fromkeys(each("s south sud sur zuid sul"), "S"),
    **dict.fromkeys(each("e east est ost este oost leste"), "E"),
    **dict.fromkeys(each("w west ouest oeste ovest"), "W"),
}  # fmt: skip


def _side(word: str) -> Tuple[str, str]:
    """N, S, E or W where a header word says one of them beside other words, and the word without it; "" for none."""
    inside = re.findall(r"[\(\[{<]([^\)\]}>]*)[\)\]}>]", word)
    bare = re.sub(r"[\(\[{<][^\)\]}>]*[\)\]}>]?", " ", word)
    parts = [fold(part.replace("°", " ")) for part in (*inside, *re.split(r"[\s_,/-]+", bare))]
    sides = {_SIDE_WORDS[part] for part in parts if part in _SIDE_WORDS}
    rest = [part for part in re.split(r"[\s_,/-]+", bare) if fold(part) not in _SIDE_WORDS]
    return (sides.pop(), " ".join(rest)) if len(sides) == 1 and fold(" ".join(rest)) else ("", word)


def _read(word: str) -> Word:
    """As :func:`read_word`, without sides."""
    bare, said, inside = _take_unit(re.sub(r"(?<=[^\W\d_A-Z])(?=[A-Z][^\W\d_]*$)", " ", word))
    tokens = fold(bare).split()
    if inside and tokens:
        told = _meaning([*tokens, *inside], said)
        other = _meaning(inside, said)
        if told.role or told.of or (other.role and _meaning(tokens, said).role in ("", other.role)):
            return told if told.role or told.of else other
    if said.nothing and len(tokens) > 1:
        tokens, said = _unit_at_end(tokens)
    if not tokens:
        return _word("", "", said)
    found = _meaning(tokens, said)
    if not (found.role or found.doubtful) and said.nothing:
        found = _with_glued_unit(tokens) or found
    return found


def _with_glued_unit(tokens: List[str]) -> Optional[Word]:
    """What words such as "heightft" or "ft height" say."""
    before = said_by(tokens[:1]) if len(tokens) > 1 else Said()
    if before.unit is not None and _meaning(tokens[1:], before).role in _LENGTHS:
        return _meaning(tokens[1:], before)
    joined = "".join(tokens)
    for unit in sorted(UNITS, key=len, reverse=True):
        rest = joined[: -len(unit)]
        if joined.endswith(unit) and len(rest) > 3 and _table().get(rest) in _LENGTHS:
            return _meaning([rest], said_by([unit]))
    return None


def _word(role: str, doubtful: str, said: Said, of: str = "") -> Word:
    return Word(role, doubtful, said.unit, said.vague, said.angle, said.strange, of)


def _meaning(tokens: List[str], said: Said) -> Word:
    ellipsoid = [token for token in tokens if re.match("ell?ips", token)]
    if ellipsoid and len(ellipsoid) < len(tokens):
        rest = _meaning([token for token in tokens if token not in ellipsoid], said)
        if rest.role in ("height", "ellipsoidal_height") or rest.doubtful == "h":
            return _word("ellipsoidal_height", "", said, rest.of)
    if _DOWN & set(tokens):
        rest = _meaning([word for word in tokens if word not in (*_DOWN, "positive")], said)
        if rest.role == "height" or rest.doubtful in ("h", "depth"):
            return _word("", "depth", said, "depth")
    role, doubtful = _look_up(tokens)
    if not role and not doubtful:
        other = [token for token in tokens if token not in _QUALIFIERS and not re.fullmatch(r"[0-9]+[a-z]?", token)]
        role, doubtful = _look_up(other) if other and other != tokens else ("", "")
        if (role == "height" or doubtful == "h") and _GEODETIC & set(tokens):
            role, doubtful = "ellipsoidal_height", ""
    if not role and not doubtful:
        plain = [token for token in tokens if token not in _FILLERS]
        role = composed_role(plain)
        doubtful = "" if role else sigma_of_axis(plain)
    of = _of_what(tokens)
    if not role and not doubtful and of:
        role = _height_of(tokens)
    if not role and not doubtful and DEPTH & set(tokens) and not set(tokens) - DEPTH - _QUALIFIERS - _OF_WATER:
        doubtful = "depth"
    if doubtful == "depth":
        of = "depth"
    return _word(role, doubtful, said, of if role in ("height", "ellipsoidal_height") or doubtful else "")


def _of_what(tokens: List[str]) -> str:
    """ "antenna" or "ground" where the words of a height say so."""
    if _ANTENNA & set(tokens):
        return "antenna"
    joined = "".join(tokens)
    return "ground" if _GROUND & set(tokens) or re.search("ground|gelande|terrain|terren|maaiveld", joined) else ""


def _height_of(tokens: List[str]) -> str:
    """The role of words such as "Elevation APC": a height, and what it is of."""
    rest = [token for token in tokens if token not in _ANTENNA | _GROUND and token not in _QUALIFIERS]
    role, doubtful = _look_up(rest) if rest else ("", "")
    return role if role in ("height", "ellipsoidal_height") else "height" if doubtful == "h" else ""


def _look_up(tokens: List[str]) -> Tuple[str, str]:
    joined = "".join(tokens)
    if joined in DOUBTFUL:
        return "", joined
    return _table().get(joined, ""), ""


def _take_unit(word: str) -> Tuple[str, Said, List[str]]:
    """The word without what stands in brackets, the unit that this is, and its words where it is none."""
    said, words = Said(), []
    for inside in re.findall(r"[\(\[{<]([^\)\]}>]*)", word):
        number = scaled(inside)
        if not number.nothing:
            said = number
            continue
        sign = angle_sign(inside)
        found = Said(angle=sign) if sign else said_by(fold(inside).split(), bracketed=True)
        said = said if found.nothing else found
        words += fold(inside).split() if found.nothing else []
    bare = re.sub(r"[\(\[{<][^\)\]}>]*[\)\]}>]?", " ", word)
    behind = re.search(r"\s(?:in |en )?([0-9][0-9./,^eE+-]*\s*[^\W\d_]+)$", bare) if said.nothing else None
    if behind is not None and not scaled(behind[1]).nothing:
        said, bare = scaled(behind[1]), bare[: behind.start()]
    if said.nothing and "°" in bare and not re.match(r"\s*[nN]°", bare):
        said = Said(angle=angle_sign(bare))
    return bare, said, words


_SECONDS = frozenset(each("sec secs second seconds sek sekunden secondes segundos secondi"))


def _unit_at_end(tokens: List[str]) -> Tuple[List[str], Said]:
    angle = _look_up(tokens[:-1])[0] in ("latitude", "longitude")
    if angle and tokens[-1] in _SECONDS:
        return tokens[:-1], Said(angle=AngleForm.SECONDS)
    if angle and not scaled(tokens[-1]).nothing:
        return tokens[:-1], scaled(tokens[-1])
    for count in (3, 2, 1):
        said = said_by(tokens[-count:]) if len(tokens) > count else Said()
        if not said.nothing:
            rest = tokens[:-count]
            return (rest[:-1] if len(rest) > 1 and rest[-1] in ("in", "en") else rest), said
    return tokens, Said()


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

    if all(len(doubtful.get(sign, ())) == 1 for sign in ("sigma_e", "sigma_n")):
        if "sigma_h" not in found:
            take("sigma_e", "sigma_e")
            take("sigma_n", "sigma_n")
        if "sigma_u" in doubtful and "sigma_v" not in found:
            take("sigma_u", "sigma_v")

    if "r" in doubtful and "h" in doubtful and "height" in found:
        take("r", "easting")  # Rechts and Hoch beside a height
        take("h", "northing")
    for sign in ("e", "o"):
        if sign in doubtful and "easting" not in found and ("n" in doubtful or "northing" in found):
            take(sign, "easting")
    if len(doubtful.get("n", ())) == 2 and "easting" in found and not {"name", "northing"} & set(found):
        found["name"], found["northing"] = [[place] for place in doubtful.pop("n")]  # number, then northing
    if "n" in doubtful:
        plan = "easting" in found and "northing" not in found
        if plan:
            take("n", "northing")
        elif "name" not in found:
            take("n", "name")
    if "h" in doubtful and "height" not in found:
        take("h", "height")
    if "depth" in doubtful and not {"height", "ellipsoidal_height"} & set(found):
        take("depth", "height")
    whole = ("easting" in found and "northing" in found) or ("x" in doubtful and "y" in doubtful)
    if "p" in doubtful and "name" not in found and whole:
        take("p", "name")
    for sign in ("d", "c"):
        if sign in doubtful and "code" not in found and whole and ("height" in found or "ellipsoidal_height" in found):
            take(sign, "code")


def name_rank(word: str) -> int:
    """Of several columns of names the order in which their words claim to be it: a name or point before a number."""
    plain = fold(word)
    if re.search("name|nom|punkt|point|pt|punt|bod|piste|nokta|точк", plain):
        return 0
    return 1 if re.search("id|stat", plain) else 2


def code_rank(word: str) -> int:
    """Of several columns of codes the order in which their words claim to be it: a code, a description, a remark."""
    plain = fold(word)
    return (
        0
        if re.search("cod|kod|koodi|код", plain)
        else 1
        if re.search("desc|feat|bezeich|opis|popis|besk|art", plain)
        else 2
    )
