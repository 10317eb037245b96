# Pastes and paints, their recipes, their need and their age.
[condition][described.PasteMixed]there is a paste=PasteMixed()
[condition][described.PasteMixed]a paste of paint is mixed=PasteMixed(paint == true)
[condition][described.PasteMixed]a paste of dye is mixed=PasteMixed(paint == false)
[condition][described.PasteMixed]there is a paint=PasteMixed(paint == true)
[condition][described.PasteMixed]there is a dye paste=PasteMixed(paint == false)
[condition][described.PasteMixed]- with the alkali inside=alkaliInside == true
[condition][described.PasteMixed]- without a recipe=recipeStated == false
[condition][described.PasteMixed]- without an amount=amountStated == false
[condition][described.PasteMixed]- without a measured strike-off=strikeOffMeasured == false
[condition][described.PasteMixed]- of the group {group}=groups contains {group}
[condition][described.PasteMixed]- holding {substance}=ingredients contains {substance}
[condition][described.PasteMixed]- called {paste}=paste == {paste}
[condition][paste.PasteUse]a paste is printed=PasteUse()
[condition][paste.PasteUse]- of which more than {mass} is needed=needGrams.best() > {mass}
[condition][paste.PasteUse]- in more than {number} impressions=impressions > {number}
[condition][paste.PasteUse]- mixed in more than {number} batches=batches > {number}
[condition][paste.PasteUse]- of which more than {share} is left over=overShare.base() > {share}
[condition][paste.PasteUse]there is a printed paste=PasteUse()
[sum][paste.PasteUse]in all more than {mass} of paste is needed=needGrams > {mass}
[sum][paste.PasteUse]the pastes weigh more than {mass} in all=needGrams > {mass}
[greatest][paste.PasteUse]the paste of which most is needed=needGrams
[condition][paste.PasteAge]a paste grows old=PasteAge()
[condition][paste.PasteAge]- beyond {time}=age.base() > {time}
[condition][paste.ThickenerHistory]a thickener has stood=ThickenerHistory()
[condition][paste.ThickenerHistory]- less than {time}=stood.base() < {time}
[condition][paste.ThickenerHistory]- older than {time}=age.base() > {time}
[condition][paste.ThickenerStrength]a thickener has a strength=ThickenerStrength()
[condition][paste.ThickenerStrength]- of less than {share}=share.best() < {share}
[condition][paste.ThickenerStrength]- of more than {share}=share.best() > {share}
[condition][paste.RecipeSum]a recipe adds up to another amount=RecipeSum()
[condition][paste.FirstPrint]a paste is used before it is mixed=FirstPrint(mixedBefore == false, minutesAhead > 0)
[condition][paste.Mixing]a paste is mixed for nothing=Mixing(prints == 0)
[condition][paste.FirstPrint]a paste is never mixed=FirstPrint(mixedBefore == false, mixings == 0)
[condition][paste.KeptInRoom]a paste's life isn't known=KeptInRoom(beyond > 0)
[condition][paste.ThickenerOnMesh]a thickener goes through a mesh=ThickenerOnMesh()
[condition][paste.ThickenerOnMesh]- finer than {number} per cm=count.perCm > {number}
[condition][paste.PasteDose]a dye paste has a recipe=PasteDose()
[condition][paste.MixedGroups]dyes of several groups are mixed in one pot=MixedGroups()
[condition][paste.SaltInPaste]a dye paste holds salt=SaltInPaste()
[condition][paste.SaltInPaste]- of more than {number} g in a kilogram=perKilogram.best() > {number}
[condition][paste.AcidInPaste]a dye paste holds acid=AcidInPaste(dye == true, cellulose == true)
[condition][paste.DarkPaste]a dye paste is dark=DarkPaste()
[condition][paste.DarkPaste]- with L* below {number}=lightness.value() < {number}
