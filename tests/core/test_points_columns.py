"""What the user may say of the columns."""

import pytest

from plugin.core.messages import SurveyError
from plugin.core.points.columns import ROLES, parse_columns


def test_file_order():
    mapping = parse_columns(" Name, easting,NORTHING ,height,-,code,+Battery")
    assert mapping.ordered == ("name", "easting", "northing", "height", "", "code", "+Battery")
    assert parse_columns("pt,e,n,z,desc").ordered == ("name", "easting", "northing", "height", "code")
    assert set(parse_columns(",".join(ROLES)).ordered) == set(ROLES)


def test_by_header_word_or_number():
    mapping = parse_columns("easting=E, northing = Hoch Wert ,height=4")
    assert mapping.chosen == (("easting", "E"), ("northing", "Hoch Wert"), ("height", 4))


@pytest.mark.parametrize(
    ("text", "code", "told"),
    [
        ("", "none_given", "--columns"),
        (" , ,", "none_given", "--columns"),
        ("name,easting,northing", "lacks", "height"),
        ("easting=1,northing=2", "lacks", "height"),
        ("name,eastng,northing,height", "unknown_role", "easting?"),
        ("easting,northing,height,sigmah", "unknown_role", "sigma_h?"),
        ("easting,northing,height,height", "twice", "height"),
        ("easting,x,northing,height", "twice", "x"),
        ("easting=1,northing=1,height=2", "twice", "1"),
        ("easting=1,easting=2,northing=3,height=4", "twice", "easting"),
        ("easting=1,northing,height=2", "mixed", "northing"),
        ("easting=,northing=2,height=3", "bad_pair", "easting="),
        ("easting=0,northing=2,height=3", "bad_pair", "easting=0"),
        ("=1,northing=2,height=3", "bad_pair", "=1"),
        ("easting,northing,height,+", "unknown_role", "+"),
    ],
)
def test_mistakes_are_named(text, code, told):
    with pytest.raises(SurveyError) as caught:
        parse_columns(text)
    assert caught.value.code == "columns." + code
    assert told in str(caught.value)
    assert "\n" not in str(caught.value)
