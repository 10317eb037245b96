# Screens, frames and what goes through them.
[condition][described.ScreenUsed]there is a screen=ScreenUsed()
[condition][described.ScreenUsed]- with a mesh finer than {number} per cm=mesh.perCm > {number}
[condition][described.ScreenUsed]- with a mesh coarser than {number} per cm=mesh.perCm < {number}
[condition][described.ScreenUsed]- with a frame longer than {length}=frameLength.base() > {length}
[condition][described.ScreenUsed]- with a frame wider than {length}=frameWidth.base() > {length}
[condition][described.ScreenUsed]- without a squeegee stated=squeegeeStated == false
[condition][described.ScreenUsed]- called {screen}=screen == {screen}
[condition][described.ScreenUsed]- that prints the design {design}=designs contains {design}
[condition][described.ScreenUsed]- with a frame longer than the table is wide=frameLength > described.PlaceOfWork.tableWidth
[condition][described.ScreenUsed]- with a frame longer than the cloth is wide=frameLength > described.ClothPrinted.width
[greatest][described.ScreenUsed]the screen with the finest mesh=mesh
[least][described.ScreenUsed]the screen with the coarsest mesh=mesh
[greatest][described.ScreenUsed]the screen with the longest frame=frameLength
[condition][screens.MeshRead]a mesh is counted=MeshRead()
[condition][screens.MeshRead]- below {number} per inch=perInch < {number}
[condition][screens.MeshRead]- above {number} per inch=perInch > {number}
[condition][screens.PullsRead]a colour is pulled=PullsRead()
[condition][screens.PullsRead]- more than {number} times=pulls > {number}
[condition][screens.ThreadLeftOut]a mesh is given without its thread=ThreadLeftOut()
[condition][screens.MeshWeave]a mesh has a thread=MeshWeave()
[condition][screens.MeshWeave]- thicker than {number} µm=threadMicrometres() > {number}
[condition][screens.MeshForPaste]a paste goes through a mesh=MeshForPaste()
[condition][screens.MeshForPaste]- finer than {number} per cm=count.perCm > {number}
[condition][screens.MeshForPaste]- coarser than {number} per cm=count.perCm < {number}
[condition][screens.MeshForPaste]- for paint=medium.text == "paint"
[condition][screens.SqueegeeFit]a squeegee goes with a screen=SqueegeeFit()
[condition][screens.SqueegeeFit]- covering its image by less than {length}=overlap.base() < {length}
[condition][screens.SeparationOnScreen]a colour lies on a screen=SeparationOnScreen()
[condition][screens.SeparationOnScreen]- longer than {length}=length.base() > {length}
[condition][screens.DetailOnMesh]a fine detail is printed=DetailOnMesh()
[condition][screens.DetailOnMesh]- finer than {length}=detail.base() < {length}
[condition][screens.DetailOnMesh]- of fewer than {number} openings=openings < {number}
[condition][screens.FrameMargin]a frame leaves a margin around its image=FrameMargin()
[condition][screens.FrameMargin]- of less than {length}=least.base() < {length}
[condition][screens.StencilImages]one screen holds several images=StencilImages(images > 1)
[condition][screens.StencilImages]- more than {number} of them=images > {number}
[condition][screens.BladeReach]a blade barely covers its images=BladeReach()
[condition][artwork.facts.ToneOfArtwork]a colour has a film=ToneOfArtwork()
[condition][artwork.facts.ToneOfArtwork]- that prints more than {share} of its rectangle=printed.base() > {share}
[condition][artwork.facts.ToneOfArtwork]- that prints less than {share} of its rectangle=printed.base() < {share}
[condition][artwork.facts.ToneOfArtwork]- of which more than {share} is grey=grey.base() > {share}
[condition][artwork.facts.SizeOfArtwork]a film is off at its far edge=SizeOfArtwork(far.mm > 0)
[condition][artwork.facts.SizeOfArtwork]- by more than {length}=far.base() > {length}
[condition][artwork.facts.FilmOnOthers]a film has edges near those of others=FilmOnOthers()
[condition][artwork.facts.FilmOnOthers]- of which less than {share} runs along edges of the others=facing.base() < {share}
[condition][artwork.facts.FilmOnOthers]- of which more than {share} would run along them elsewhere=moved.base() > {share}
[condition][artwork.facts.FilmOnOthers]- of which more than {share} would run along them turned over=turned.base() > {share}
[condition][artwork.facts.FilmOnOthers]- that is off by more than {length}=by.base() > {length}
[condition][artwork.facts.FilmOnOthers]- that is skewed by more than {length} at its ends=skewed.base() > {length}
[condition][artwork.facts.FilmOnOthers]- with a strip between them that is uneven by more than {length}=spread.base() > {length}
[condition][artwork.facts.PrintAtBorder]a film prints somewhere=PrintAtBorder()
[condition][artwork.facts.PrintAtBorder]- over more than {share} of its border=border.base() > {share}
[condition][artwork.facts.PrintAtBorder]- over more than {share} of what is printed before it=over.base() > {share}
[condition][artwork.facts.PrintAtBorder]- as a negative does=likeNegative == true
[condition][artwork.facts.PrintAtBorder]- of whose bare part more than {share} is what an outline encloses=enclosed.base() > {share}
[condition][artwork.facts.MarksOnFilms]films have register marks=MarksOnFilms()
[condition][artwork.facts.MarksOnFilms]- within {length} of their border=strip.base() <= {length}
[condition][artwork.facts.MarksOnFilms]- that another film lacks=without.size() > 0
[condition][artwork.facts.ArtworksApart]films of one design differ in size=ArtworksApart()
[condition][artwork.facts.ArtworksApart]- by more than {length}=by.base() > {length}
[condition][artwork.facts.PointsApart]films of one design differ in their points=PointsApart()
[condition][artwork.facts.PointsApart]- by more than {length} at the far edge=by.base() > {length}
[condition][artwork.facts.StatedPrint]the plan states a printed area beside a film=StatedPrint()
[condition][artwork.facts.StatedPrint]- that is off by more than {share}=off.base() > {share}
[condition][screens.FineOnMesh]a film goes on a mesh=FineOnMesh()
[condition][screens.FineOnMesh]- with more than {number} specks=specks > {number}
[condition][screens.FineOnMesh]- with more than {number} points that run out=tips > {number}
[condition][screens.HalftoneOnMesh]a halftone goes on a mesh=HalftoneOnMesh()
[condition][screens.HalftoneOnMesh]- with less than {number} threads for each row of its dots=times < {number}
[condition][artwork.facts.LineInPoints]a film has a finest line=LineInPoints()
[condition][artwork.facts.LineInPoints]- finer than {length}=line.base() < {length}
[condition][artwork.facts.LineInPoints]- of fewer than {number} points of the film=points < {number}
[condition][artwork.facts.LineInPoints]- of a register mark=ofMark == true
[condition][artwork.facts.OpenJoint]two films were compared=OpenJoint()
[condition][artwork.facts.OpenJoint]- that leave less than {length} of ground between their colours=gapMm < {length}
[condition][artwork.facts.OpenJoint]- that meet edge to edge over more than {length}=butt.base() > {length}
[condition][artwork.facts.OutlineOverEdge]an outline laps the edge of a colour=OutlineOverEdge()
[condition][artwork.facts.OutlineOverEdge]- by less than {length}=lap.base() < {length}
[condition][artwork.facts.OutlineOverEdge]- under which the colour could run further=choked == true
[condition][artwork.facts.OutlineOverEdge]- that leaves more than {area} bare once it is laid off=bare.base() > {area}
[condition][artwork.facts.LooseOutline]an outline misses several colours=LooseOutline()
[condition][artwork.facts.ColourPastOutline]a colour stands out past its outline=ColourPastOutline()
[condition][artwork.facts.ColourPastOutline]- by more than {length}=width.base() > {length}
[condition][artwork.facts.ColourPastOutline]- along more than {share} of it=ofEdge.base() > {share}
[condition][artwork.facts.ColourPastOutline]- as a colour does that was spread too far=spread == true
[condition][artwork.facts.FilmUnderOthers]others are printed on an opaque colour by their films=FilmUnderOthers()
[condition][artwork.facts.FilmUnderOthers]- that cover more than {share} of it=covered.base() > {share}
[condition][artwork.facts.FilmUnderOthers]- of which the opaque ones hide more than {share} of it=hidden.base() > {share}
[condition][artwork.facts.FilmUnderOthers]- beside which more than {area} of it shows=beside.base() > {area}
[condition][artwork.facts.ColourOffUnderlay]a transparent colour is printed after opaque ones by their films=ColourOffUnderlay()
[condition][artwork.facts.ColourOffUnderlay]- with more than {share} of it beside those=share.base() > {share}
[condition][artwork.facts.WideLap]two colours lap by their films=WideLap()
[condition][artwork.facts.WideLap]- by more than {length}=width.base() > {length}
[condition][paste.HiddenUnderOpaque]a colour lies under an opaque one by their films=HiddenUnderOpaque()
[condition][paste.HiddenUnderOpaque]- with more than {share} of what it prints=share.base() > {share}
[condition][artwork.facts.StatedWidth]the plan states a width beside a film that has another=StatedWidth()
[condition][artwork.facts.StatedWidth]- by more than {share}=off.base() > {share}
