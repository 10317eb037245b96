# The plan as it is written: what it uses and where.
[condition][described.WholePlan]there is a plan=WholePlan()
[condition][described.WholePlan]the plan takes more than {number} days=WholePlan(days > {number})
[condition][described.WholePlan]the plan has more than {number} pastes=WholePlan(pastes > {number})
[condition][described.WholePlan]the plan has more than {number} screens=WholePlan(screens > {number})
[condition][described.WholePlan]the plan lays frames more than {number} times=WholePlan(lays > {number})
[condition][described.WholePlan]the plan has no notes=WholePlan(notes == false)
[condition][described.DesignPrinted]there is a design=DesignPrinted()
[condition][described.DesignPrinted]a design has more than {number} colours=DesignPrinted(colours > {number})
[condition][described.DesignPrinted]- with more than {number} colours=colours > {number}
[condition][described.DesignPrinted]- without a key colour=withKey == false
[condition][described.DesignPrinted]- longer than {length}=length.base() > {length}
[condition][described.DesignPrinted]- wider than {length}=width.base() > {length}
[condition][described.DesignPrinted]- called {design}=design == {design}
[condition][described.ArrangementPlaced]there is an arrangement=ArrangementPlaced()
[condition][described.ArrangementPlaced]a series has more than {number} placements=ArrangementPlaced(kind == "series", placements > {number})
[condition][described.ArrangementPlaced]there is a series=ArrangementPlaced(kind == "series")
[condition][described.ArrangementPlaced]there is a border=ArrangementPlaced(kind == "border")
[condition][described.ArrangementPlaced]there is a fill=ArrangementPlaced(kind == "fill")
[condition][described.ArrangementPlaced]- with more than {number} placements=placements > {number}
[condition][described.ArrangementPlaced]- with more than {number} colours=colours > {number}
[condition][described.ArrangementPlaced]- that is turned=turned == true
[condition][described.ArrangementPlaced]- that is mirrored=mirrored == true
[condition][described.ArrangementPlaced]- of the design {design}=design == {design}
[greatest][described.ArrangementPlaced]the longest series=kind == "series", placements
[condition][described.ClothPrinted]there is a cloth=ClothPrinted()
[condition][described.ClothPrinted]the cloth isn't washed=ClothPrinted(washed == false)
[condition][described.ClothPrinted]the cloth holds {fibre}=ClothPrinted(fibres contains {fibre})
[condition][described.ClothPrinted]the cloth is longer than {length}=ClothPrinted(length.base() > {length})
[condition][described.ClothPrinted]- longer than {length}=length.base() > {length}
[condition][described.ClothPrinted]- wider than {length}=width.base() > {length}
[condition][described.ClothPrinted]- heavier than {weight}=mass.base() > {weight}
[condition][described.ClothPrinted]- lighter than {weight}=mass.base() < {weight}
[condition][described.PlaceOfWork]there is a table=PlaceOfWork()
[condition][described.PlaceOfWork]there is a room=PlaceOfWork()
[condition][described.PlaceOfWork]the table is not railed=PlaceOfWork(railed == false)
[condition][described.PlaceOfWork]more than {number} people print=PlaceOfWork(people > {number})
[condition][described.PlaceOfWork]fewer than {number} people print=PlaceOfWork(people < {number})
[condition][described.PlaceOfWork]nobody wears {protection}=PlaceOfWork(worn not contains {protection})
[condition][described.PlaceOfWork]the room is cooler than {temperature}=PlaceOfWork(temperature.base() < {temperature})
[condition][described.PlaceOfWork]the room is damper than {share}=PlaceOfWork(humidity.base() > {share})
[condition][described.EquipmentThere]there is equipment=EquipmentThere()
[condition][described.EquipmentThere]the room has fewer than {number} sinks=EquipmentThere(sinks < {number})
[condition][described.EquipmentThere]the room has fewer than {number} fans=EquipmentThere(fans < {number})
[condition][described.EquipmentThere]the room has fewer than {number} hair-dryers=EquipmentThere(hairDryers < {number})
[condition][described.EquipmentThere]the room has fewer than {number} drying places=EquipmentThere(dryingPlaces < {number})
