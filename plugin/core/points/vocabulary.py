"""Header words of survey files, by the role that each names.

English, French, German, Spanish, and the words most used in the survey files of their neighbours. The words are
those of the trade and of dictionaries (common practice, no source), folded as :func:`.words.fold` does.
"""

from __future__ import annotations

from typing import Dict, FrozenSet, List


def each(words: str) -> List[str]:
    return words.split()


#: Names of levels, folded and without blanks; those that end in a year or a place are systems of their own.
LEVELS: FrozenSet[str] = frozenset(
    each("""nhn nn unn unhn ua um nap taw ahd aod od odn mod ngf ign69 snm slm snn bnm npm nm nmm msl msnm amsl asl
    dvr90 dnn rh2000 rh70 rh00 n2000 n60 nn2000 nn1954 evrf evrf2000 evrf2007 evrf2019 dhhn dhhn12 dhhn85 dhhn92
    dhhn2016 navd navd88 ngvd ngvd29 cgvd28 cgvd2013 ln02 lhn95 las07 las2000 bpv kronsztadt kronstadt kron86 hvrs71
    nzvd2016 nzvd2009 bal77 moh oh muh oeh hvd redna77 trieste cascais alicante genova genua malin poolbeg belfast
    newlyn egm96 egm2008 geoid mohnn2000 mnn ppnm sl""")
)
#: Words of columns of a few texts that are no codes: the cover of the ground at check points.
NO_CODES = frozenset({"cover"})
#: Words that leave no doubt, by role.
CERTAIN: Dict[str, str] = {
    "name": """name id fid pt pnt point pointid pointname pointno pointnumber pointnum ptid ptno ptnum ptname number
        num no nr stationname
        nom numero matricule nopoint numpoint numeropoint numerodupoint numerodepoint nomdupoint nompoint
        punkt punktnr punktnummer punktname punktid pktnr pkt pnr ptnr nummer bezeichnung
        punto pto nombre numeropunto nopunto nombrepunto nombredelpunto numerodepunto numerodelpunto idpunto
        ptnumber pointlabel labelpoint
        naam puntnummer puntnr punt puntnaam
        nome ponto numeroponto nomeponto idponto numeropunti nomepunto
        nazwa numer nrpunktu numerpunktu nazwapunktu nrpkt
        cislo cislobodu bod nazev
        namn navn punktnavn punktnamn namnpunkt
        nimi piste pistenumero nev pont pontszam nume punct tocka oznaka nokta noktano noktaadi
        numerbodu σημειο αριθμοσ nokta punktid punktnum nrpkt stanovisko broj rednibroj
        punktur punkts taskas тачка 点号 点名 点编号 点番号 점번호 titik diem נקודה نقطة punt pto
        имя номер точка номерточки номточки имяточки название""",
    "easting": """easting east eastings eastcoord
        est coordest estant
        ost rechts rechtswert rw ostwert oste
        este coordenadaeste coordeste
        eastingcoord eastingx xeast xeasting ecoord xcoordeast estx xest rechtswerty
        oost oosting leste coordenadaleste estecoord wschod vychod ostra osterled ostlig itakoordinaatti ita kelet
        istok dogu saga ανατολη austur vzhod ida austrumi rytai схід изток исток 东坐标 東座標 동좌표 timur dong oos
        מזרח شرق شرقيات الشرقيات восток""",
    "northing": """northing north northings northcoord
        nord coordnord
        hoch hochwert nordwert hw
        norte coordenadanorte coordnorte
        northingcoord northingy ynorth ynorthing ncoord nordy ynord hochwertx
        noord noording polnoc sever norr nordlig pohjoinen pohjoiskoordinaatti eszak sjever kuzey yukari
        βορρασ norður pohi ziemeli siaure північ 北坐标 北座標 북좌표 utara bac צפון شمال شماليات الشماليات
        север""",
    "height": """height elevation elev ele z heightmsl orthometricheight orthoheight elevationmsl msl reducedlevel rl
        altitude alt altitudengf hauteur altitudeorthometrique hauteurorthometrique cote
        hohe hoehe gelandehohe gelaendehoehe hohenn hoehenn nhn hohenhn orthometrischehohe gebrauchshohe hoehenhn
        altura cota elevacion altitud cotaortometrica alturaortometrica elevacionortometrica altitudortometrica
        heights elevations reducedlevels groundlevel groundheight groundelevation groundelev groundlvl
        terrainheight elevationmetres level levels zcoord zcoordinate zelevation heightz hgt ht elv spotheight
        altitudeterrain altitudesol zterrain zsol nivel
        gelandehoehe hoehez zhohe hohez
        hoogte maaiveld maaiveldhoogte quota altezza altitudine elevazione quotaterreno
        altimetria cotaterreno altitudeortometrica elevacao wysokosc rzedna wysokoscnormalna wysokoscterenu
        vyska nadmorskavyska hojd hojde hoyde kote markhojd terrengkote korkeus maanpinta magassag altitudine
        visina nadmorskavisina kot yukseklik υψομετρο υψοσ up coordup
        haeð korgus augstums aukstis висина височина висота 高程
        標高 표고 elevasi caodo גובה ارتفاع الارتفاع منسوب المنسوب высота отметка
        bedlevel bedelevation spotlevel redlevel terrainlevel absheight hort zort hortho cotetn zeminkotu""",
    "ellipsoidal_height": """ellipsoidalheight ellipsoidheight ellipheight ellheight hell ellh hellipsoidal heightell
        ellipsoidalelevation
        hauteurellipsoidale hauteurellipsoide altitudeellipsoidale hellipsoidale
        ellipsoidischehohe ellipsoidhohe ellipsoidischehoehe ellipsoidhoehe hoheell hoheellipsoid
        alturaelipsoidal altitudelipsoidal alturaelipsoide helipsoidal cotaelipsoidal elevacionelipsoidal
        heightellipsoid heightaboveellipsoid hae ellipsoidalelev geodeticheight geodheight
        altezzaellissoidica quotaellissoidica quotaellissoidale altitudeelipsoidal altitudegeometrica
        wysokoscelipsoidalna elipsoidickavyska ellipsoidhojd ellipsoidehojde ellipsoidehoyde""",
    "latitude": """latitude lat latitud breite breitengrad geographischebreite geogrbreite
        latitudine breedtegraad szerokosc szerokoscgeograficzna zemepisnasirka breddgrad bredde leveysaste
        enlem широта latitudewgs""",
    "longitude": """longitude lon long lng longitud lange laenge langengrad laengengrad geographischelange
        geographischelaenge
        longitudine lengtegraad dlugosc dlugoscgeograficzna zemepisnadelka langdgrad lengde pituusaste
        boylam долгота""",
    "code": """code featurecode pointcode fieldcode desc description feature descriptor
        codepoint codeterrain libelle nature designation
        punktcode kode beschreibung objektart punktart art
        codigo descripcion desc codigopunto
        codes fcode ptcode codedesc featurecodes featuretype layercode pointdesc pointdescription ptdesc descr
        descriptions remark remarks comment comments note notes attribute pcode
        remarque remarques commentaire commentaires observation observations
        bemerkung bemerkungen anmerkung kommentar codierung schlussel
        omschrijving opmerking opmerkingen puntcode
        codice descrizione osservazioni codigos descricao observacao observacoes observacion observaciones
        kod kody opis uwagi kodpunktu popis poznamka kodbodu beskrivning beskrivelse kommentti koodi selite lajikoodi
        megjegyzes leiras cod descriere opaska aciklama κωδικοσ περιγραφη
        temakode tema kodenr punktkode objekttype objekttyp objektkode objectcode objectcodes layer thema kodas
        bem kennung vermarkung obs denumire omschr laji
        artikel lajinimi nota merkmal gegenstand remarq comm descricion
        koods koda kods kood koði codi ma 编码 コート 코드 קוד رمز код описание примечание комментарий""",
    "sigma_h": """sigmah hrms hsigma sigmahz horizontalprecision horizontalaccuracy horizontalsigma hprecision
        haccuracy hacc stdh sdh precisionh precisionhorizontal
        precisionhorizontale precisionplanimetrique ecarttypeh precisionplani
        lagegenauigkeit genauigkeitlage prazisionlage standardabweichunglage sigmalage lagestd
        precisionplanimetrica desviacionh exactitudhorizontal
        hrmse rmsh sigma2d rms2d accuracyh hozprec hprec horprec horzprec horizprec horizontalrms rmshorizontal
        cq2d sigmaen precisionxy sxy""",
    "sigma_v": """sigmav vrms vsigma sigmaz verticalprecision verticalaccuracy verticalsigma vprecision vaccuracy
        vacc stdv sdv precisionv precisionvertical
        precisionverticale precisionaltimetrique ecarttypev precisionalti
        hohengenauigkeit hoehengenauigkeit genauigkeithohe genauigkeithoehe prazisionhohe standardabweichunghohe
        sigmahohe sigmahoehe hohenstd
        precisionaltimetrica desviacionv exactitudvertical
        vrmse rmsv sigma1d rms1d accuracyv vertprec vprec vertrms verticalrms rmsvertical cq1d sigmau
        precisionz sz""",
    "fix": """fix fixtype fixquality solution solutiontype positiontype gnssfix quality
        typedesolution qualitedufix qualitegnss
        losung losungstyp loesung loesungstyp fixtyp positionstyp
        solucion tipodesolucion tiposolucion calidaddelfix
        fixstatus solstatus rtkstatus gpsstatus gnssstatus losungsart loesungsart solutionstatus""",
    "satellites": """satellites sats sat nsat nsats numsat numsats numberofsatellites satellitecount svs usedsatellites
        nbsat nbsatellites nombredesatellites nbresatellites
        satelliten anzahlsatelliten anzsat anzahlsat satanzahl
        satelites numsatelites numerodesatelites nsatelites
        satcount numbersats satellitesused usedsats satsused satellieten satelliti satelites satelity""",
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
        inclinacion inclinacionjalon
        tiltdegrees inclination poleinclination inclinazione inclinacao""",
    "pole_height": """poleheight rodheight antennaheight targetheight heightofpole
        hauteurcanne hauteurantenne hauteurdecanne hauteurdantenne
        stabhohe stabhoehe antennenhohe antennenhoehe lotstabhohe lotstabhoehe
        alturajalon alturaantena alturadeantena alturabaston alturadeljalon
        poleheights polelength rodlength antennaheights instrumentheight hi antheight anthgt rodhgt
        polehgt targethgt
        hauteurducanne hauteurcible longueurcanne stablange stablaenge reflektorhohe zielhohe zielhoehe
        stokhoogte antennehoogte altezzapalina altezzaantenna altezzaasta alturabastao alturaantena alturadobastao
        wysokosctyczki wysokoscanteny vyskaanteny vyskavytycky antennhojd stanghojd antennehojde antennehoyde
        stanghoyde""",
    "time": """time datetime timestamp date utc utctime gpstime dateandtime localtime
        heure dateheure horodatage dateetheure
        zeit uhrzeit zeitpunkt datum datumzeit datumuhrzeit zeitstempel
        hora fechahora fecha tiempo fechayhora
        utcdatetime gpsdatetime gpsdate gpstimestamp utcdate recordedat measuredat surveytime surveydate
        datetijd tijd datumtijd datumentijd dataora dataeora ora dataehora godzina dataigodzina datagodzina
        datumochtid datumacas hodina czas dataczas cas datumcas tid datumtid datotid dato
        tidspunkt aika paivays ido datum ora vreme zaman tarih время дата датавремя""",
}  # fmt: skip
